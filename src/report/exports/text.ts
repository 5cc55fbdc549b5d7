import type { Decision } from '../../rules/decision.ts';
import { shortReport } from '../whole-report.ts';
import { type TextLook, textLines } from './text-blocks.ts';

/** The decision in short, for a terminal of the given width. Ends with one line break. */
export const textReport = (decision: Decision, look: TextLook): string =>
  `${textLines(shortReport(decision), decision, look).join('\n').trimEnd()}\n`;
