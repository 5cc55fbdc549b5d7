import { CONTROL, UNPRINTABLE } from '../../documents/printable.ts';
import type { Key } from './key.ts';

const BEGINS = '\u001b[200~';
const ENDS = '\u001b[201~';

/** So many characters of one paste are taken: a list of forty parts with everything said of them has a tenth of it. */
export const LONGEST_PASTE = 100_000;

interface Bracketed {
  readonly text: string;
  /** whether its end has come */
  readonly ended: boolean;
  /** what came behind it */
  readonly after: string;
}

/** A paste at the beginning of what came, where the terminal says that it is one. */
export function bracketed(buffer: string): Bracketed | null {
  if (!buffer.startsWith(BEGINS)) return null;
  const end = buffer.indexOf(ENDS);
  return end < 0
    ? { text: buffer.slice(BEGINS.length), ended: false, after: '' }
    : { text: buffer.slice(BEGINS.length, end), ended: true, after: buffer.slice(end + ENDS.length) };
}

/** Of a paste that goes on, what is kept: of one that is too long enough to see that, and its end when it comes. */
export const waiting = (buffer: string): string =>
  buffer.length <= LONGEST_PASTE + 2 * BEGINS.length
    ? buffer
    : `${buffer.slice(0, LONGEST_PASTE + 2 * BEGINS.length)} ${buffer.slice(1 - ENDS.length)}`;

/** The first line of a paste that holds anything, without what could steer a display; of several lines all as well. */
export function pasteOf(text: string): Key {
  if (text.length > LONGEST_PASTE) return { kind: 'paste', text: '', tooLong: true };
  const plain = text.replace(
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    /\u001b(?:\[[0-?]*[ -/]*[@-~]|\][^\u0007\u001b]*(?:\u0007|\u001b\\)?|O.|.)?/g,
    '',
  );
  const [first = '', ...more] = filledLines(plain).map((each) =>
    each.replace(/\t/g, ' ').replace(UNPRINTABLE, '').trim(),
  );
  return { kind: 'paste', text: first, ...(more.length === 0 ? {} : { whole: plain }) };
}

/** Lines that hold anything but room. */
export const filledLines = (text: string): readonly string[] =>
  text.split(/[\r\n\u2028\u2029]+/).filter((line) => line.replace(UNPRINTABLE, '').trim() !== '');

/** Nothing but characters, tabs and line ends: what a paste looks like that the terminal does not mark as one. */
export const isPlain = (text: string): boolean => text !== '' && !CONTROL.test(text);

const LONG_READ = 16;

/**
 * Whether one read from the terminal may be the beginning of such a paste: a line with its end, or much text at once.
 * Whoever types gives a character a read.
 */
export const mayBePaste = (text: string): boolean =>
  isPlain(text) && (/[^\r\n][\r\n]/.test(text) || text.length >= LONG_READ);
