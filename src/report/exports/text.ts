import type { Decision } from '../../rules/decision.ts';
import { outcome } from '../sections/outcome.ts';
import { shortReport } from '../whole-report.ts';
import { type TextLook, textLines } from './text-blocks.ts';

/**
 * The decision in short, for a terminal of the given width. It ends with the answer once more, because the top of
 * it has left the screen by then.
 */
export const textReport = (decision: Decision, look: TextLook): string =>
  `${textLines(shortReport(decision), decision, look).join('\n').trimEnd()}\n\nIN SHORT\n\n${answerReport(decision, look)}`;

/** The answer alone, in a sentence or two: what is said beside a report that goes to a file. */
export const answerReport = (decision: Decision, look: TextLook): string => {
  const first = outcome(decision).filter(({ kind }) => kind === 'paragraph');
  return `${textLines(first.slice(0, 1), decision, look).join('\n').trimEnd()}\n`;
};
