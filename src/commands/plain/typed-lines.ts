import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { printable } from '../../documents/printable.ts';

/** Why there are no more lines. */
type End = { readonly end: 'input' } | { readonly end: 'signal'; readonly signal: EndingSignal };
/** Signals that end the interview. */
export type EndingSignal = 'SIGINT' | 'SIGTERM' | 'SIGHUP' | 'SIGQUIT';
/** `early`: typed before it was asked for. */
type Typed = { readonly line: string; readonly early: boolean } | End;

export interface TypedLines {
  /** The next line, as soon as there is one; lines that came early wait. */
  readonly next: () => Promise<Typed>;
  /** No more lines are waited for: a signal came. */
  readonly stop: (signal: EndingSignal) => void;
  readonly close: () => void;
}

/** Lines of a stream, one at a time, cleaned. The terminal itself edits the line, so nothing is written to it here. */
export function typedLines(input: Readable): TypedLines {
  const waiting: Typed[] = [];
  let resolve: ((typed: Typed) => void) | null = null;
  const deliver = (typed: Typed) => {
    if (resolve === null) waiting.push(typed);
    else resolve(typed);
    resolve = null;
  };
  const reader = createInterface({ input, terminal: false, crlfDelay: Number.POSITIVE_INFINITY });
  reader.on('line', (line) => deliver({ line: cleaned(line), early: resolve === null }));
  reader.on('close', () => deliver({ end: 'input' }));
  input.on('error', () => deliver({ end: 'input' }));
  return {
    next: () => {
      const first = waiting.shift();
      return first === undefined
        ? new Promise((done) => {
            resolve = done;
          })
        : Promise.resolve(first);
    },
    stop: (signal) => {
      waiting.length = 0;
      deliver({ end: 'signal', signal });
    },
    close: () => {
      reader.close();
      input.pause();
    },
  };
}

// Escape sequences of keys and pastes as whole; what is left of control characters falls to `printable`.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const ESCAPES = /\u001b(?:\[[0-?]*[ -/]*[@-~]|\][^\u0007\u001b]*(?:\u0007|\u001b\\)?|O.|.)?/g;
const LONGEST = 500;

/** A line as text: keys that are no text are gone, tabs are spaces, nothing can steer a display. */
export function cleaned(line: string): string {
  const text = line
    .slice(0, LONGEST * 4)
    .replace(ESCAPES, '')
    .replace(/\t/g, ' ');
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  return printable(text.replace(/[\u0000-\u001f\u007f-\u009f]/g, ''))
    .slice(0, LONGEST)
    .trim();
}
