import type { Decision } from '../../rules/decision.ts';
import { everyArrangement } from '../sections/every-arrangement.ts';
import { outcome } from '../sections/outcome.ts';
import { shortReport } from '../whole-report.ts';
import { type TextLook, textLines } from './text-blocks.ts';

/**
 * The decision in short, for a terminal of the given width. It ends with the answer once more, because the top of
 * it has left the screen by then. `all`: before that a line for every arrangement that the decision lists.
 */
export function textReport(decision: Decision, look: TextLook, { all = false } = {}): string {
  const blocks = [...shortReport(decision), ...(all ? everyArrangement(decision) : [])];
  const text = textLines(blocks, decision, look).join('\n').trimEnd();
  return `${text}\n\nIN SHORT\n\n${answerReport(decision, look)}`;
}

/** The answer alone, in a sentence or two: what is said beside a report that goes to a file. */
export const answerReport = (decision: Decision, look: TextLook): string => {
  const first = outcome(decision).filter(({ kind }) => kind === 'paragraph');
  return `${textLines(first.slice(0, 1), decision, look).join('\n').trimEnd()}\n`;
};
