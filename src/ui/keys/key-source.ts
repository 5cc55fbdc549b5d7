import { StringDecoder } from 'node:string_decoder';
import type { Key } from './key.ts';
import { bracketed, filledLines, isPlain, LONGEST_PASTE, mayBePaste, pasteOf } from './paste.ts';
import { readKeys } from './read-keys.ts';

/** Of a terminal, what keys are read from. */
export interface KeyInput {
  on(event: 'data', listener: (chunk: Buffer | string) => void): unknown;
  off(event: 'data', listener: (chunk: Buffer | string) => void): unknown;
  resume(): unknown;
  pause(): unknown;
}

/** A lone Escape counts after so long: on a slow line the rest of an arrow key may still be on its way. */
const ESCAPE_MS = 40;
/** What comes in one read like a paste that is not marked as one is held so long, for the rest of it. */
const REST_MS = 30;
/** A marked paste whose end does not come has ended after so long. */
const PASTE_MS = 1000;

export interface KeySource {
  readonly start: () => void;
  readonly stop: () => void;
}

/**
 * Hands over one key after the other, in the order in which they came. Several lines that come at once are a paste, whether
 * the terminal marks it as one or not: their ends are no Enter, so that they never answer the next question.
 */
export function keySource(input: KeyInput, onKey: (key: Key) => void): KeySource {
  const decoder = new StringDecoder('utf8');
  let buffer = '';
  /** what may be a paste that is not marked */
  let held = '';
  let timer: NodeJS.Timeout | undefined;
  let flush: NodeJS.Immediate | undefined;
  const stopWaiting = (): void => {
    clearTimeout(timer);
    clearImmediate(flush);
  };
  const wait = (ms: number, then: () => void): void => {
    timer = setTimeout(() => {
      // where we were kept from running, the rest may be here and not be read yet: it is read before this
      flush = setImmediate(then);
    }, ms);
  };
  const drain = (isLast: boolean): void => {
    const { keys, rest } = readKeys(buffer, isLast);
    buffer = rest;
    for (const key of keys) onKey(key);
  };
  const release = (): void => {
    const text = held;
    held = '';
    if (filledLines(text).length > 1) onKey(pasteOf(text));
    else buffer += text;
    drain(false);
  };
  let endedInReturn = false;
  const feed = (chunk: Buffer | string): void => {
    stopWaiting();
    const read = typeof chunk === 'string' ? chunk : decoder.write(chunk);
    // one line end, cut in two by the way
    const text = endedInReturn && read.startsWith('\n') ? read.slice(1) : read;
    endedInReturn = read.endsWith('\r');
    if (held === '' ? buffer === '' && mayBePaste(text) : isPlain(text)) {
      // of one that is too long, enough to see that
      held = `${held}${text}`.slice(0, LONGEST_PASTE + 1);
      wait(REST_MS, release);
      return;
    }
    if (held !== '') release();
    buffer += text;
    drain(false);
    if (buffer !== '') wait(bracketed(buffer) === null ? ESCAPE_MS : PASTE_MS, () => drain(true));
  };
  return {
    start: () => {
      input.on('data', feed);
      input.resume();
    },
    stop: () => {
      stopWaiting();
      input.off('data', feed);
      input.pause();
    },
  };
}
