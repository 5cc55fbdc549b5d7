import { printable } from '../../documents/printable.ts';
import { plainAscii } from '../../report/exports/plain-ascii.ts';

/**
 * A text as it may be shown, before it is laid out: nothing in it steers a display, and symbols that a plain terminal
 * may lack are spelled out where that is asked for. Example: written('35°', true) → '35 deg'.
 */
export const written = (text: string, ascii: boolean): string =>
  ascii ? plainAscii(printable(text)) : printable(text);

/** The same for every text in plain data. */
export function allWritten<Data>(data: Data, ascii: boolean): Data {
  if (typeof data === 'string') return written(data, ascii) as Data;
  if (Array.isArray(data)) return data.map((each: unknown) => allWritten(each, ascii)) as Data;
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data).map(([key, value]: [string, unknown]) => [key, allWritten(value, ascii)]),
  ) as Data;
}
