import type { Writable } from 'node:stream';
import { printable } from '../../documents/printable.ts';
import { paragraph, USUAL_WIDTH } from './paragraph.ts';

/** Columns of the terminal that is written to. */
export const columnsOf = (stdout: Writable & { readonly columns?: number }): number =>
  stdout.columns ?? USUAL_WIDTH;

/** A sentence on lines of its own. */
export function say(sentence: string, stdout: Writable): void {
  for (const line of paragraph(printable(sentence), columnsOf(stdout))) stdout.write(`${line}\n`);
}
