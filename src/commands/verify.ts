import { printable } from '../documents/printable.ts';
import { describeProblem } from '../documents/problem.ts';
import { readFileText } from '../documents/read-file.ts';
import type { Difference } from '../verification/json-differences.ts';
import { type Verification, verify } from '../verification/verify.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { DIFFERENCES, UNUSABLE } from './outcome-codes.ts';

/** Every arrangement of a large catalog, each check written out. */
const LARGEST_EXPORT = 512 * 1024 * 1024;

/**
 * `fivesides verify`: works out every number of an exported decision again from what it carries. Exit code 0: all
 * the same; 1: a line for each that is not; 2: a file that carries no decision.
 */
export async function verifyCommand(file: string, lines: Lines = PROCESS_LINES): Promise<number> {
  const text = readFileText(file, LARGEST_EXPORT);
  const reading = text.ok ? verify(text.value, file) : text;
  if (!reading.ok) {
    for (const problem of reading.problems) lines.remark(describeProblem(problem));
    return UNUSABLE;
  }
  for (const difference of reading.value.differences)
    lines.result(printable(`${file}: ${inWords(difference)}`));
  const summary = printable(summaryOf(file, reading.value));
  if (reading.value.differences.length === 0) {
    lines.result(summary);
    return 0;
  }
  lines.remark(summary);
  return DIFFERENCES;
}

function inWords({ where, says, comesOut }: Difference): string {
  if (says === null) return `${where}: missing; it comes out as ${comesOut}`;
  if (comesOut === null) return `${where}: ${says} stands here; it does not come out at all`;
  return `${where}: ${says} stands here; it comes out as ${comesOut}`;
}

function summaryOf(file: string, { kind, numbers, arrangements, differences }: Verification): string {
  const again = `${arrangements} arrangements were judged again from what ${file} carries`;
  const held =
    kind === 'decision' ? `${numbers} numbers, and every word` : `${numbers} numbers, and every line`;
  if (differences.length === 0) return `${again}: ${held}, come out the same.`;
  const count = differences.length === 1 ? 'One difference' : `${differences.length} differences`;
  return `${count}: ${again}.`;
}
