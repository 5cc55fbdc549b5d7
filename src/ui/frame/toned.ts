import type { Verdict } from '../../rules/decision.ts';
import type { Row, Span } from '../look/row.ts';

const VERDICTS: Readonly<Record<string, Verdict>> = {
  '✓': 'holds',
  OK: 'holds',
  '~': 'holds if',
  IF: 'holds if',
  '✗': 'fails',
  NO: 'fails',
  '?': 'open',
  '??': 'open',
};
const SIGNED = /((?:✓|OK) holds|(?:~|IF) holds if|(?:✗|NO) fails|\?{1,2} open)/;

/** A line of the report with its verdicts and headings toned; the words say the same without. */
export function tonedRow(line: string): Row {
  if (/^[A-Z][A-Z ,’-]+$/.test(line)) return { spans: [{ text: line, tone: 'title' }] };
  const spans = line.split(SIGNED).flatMap((text): readonly Span[] => {
    if (text === '') return [];
    const verdict = SIGNED.test(text) ? VERDICTS[text.split(' ')[0] ?? ''] : undefined;
    return [{ text, tone: verdict ?? 'plain' }];
  });
  return { spans };
}
