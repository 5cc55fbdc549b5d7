import { StringDecoder } from 'node:string_decoder';
import type { Key } from './key.ts';
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

export interface KeySource {
  readonly start: () => void;
  readonly stop: () => void;
}

/** Hands over one key after the other, in the order in which they came. */
export function keySource(input: KeyInput, onKey: (key: Key) => void, escapeMs = ESCAPE_MS): KeySource {
  const decoder = new StringDecoder('utf8');
  let buffer = '';
  let timer: NodeJS.Timeout | undefined;
  let flush: NodeJS.Immediate | undefined;
  const wait = (): void => {
    clearTimeout(timer);
    clearImmediate(flush);
  };
  const drain = (isLast: boolean): void => {
    const { keys, rest } = readKeys(buffer, isLast);
    buffer = rest;
    for (const key of keys) onKey(key);
  };
  let endedInReturn = false;
  const feed = (chunk: Buffer | string): void => {
    wait();
    const text = typeof chunk === 'string' ? chunk : decoder.write(chunk);
    // one line end, cut in two by the way
    buffer += endedInReturn && text.startsWith('\n') ? text.slice(1) : text;
    endedInReturn = text.endsWith('\r');
    drain(false);
    if (buffer === '') return;
    timer = setTimeout(() => {
      // where we were kept from running, the rest may be here and not be read yet: it is read before this
      flush = setImmediate(() => drain(true));
    }, escapeMs);
  };
  return {
    start: () => {
      input.on('data', feed);
      input.resume();
    },
    stop: () => {
      wait();
      input.off('data', feed);
      input.pause();
    },
  };
}
