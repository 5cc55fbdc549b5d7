import { readerNames } from '../../report/reader-names.ts';
import type { Screen } from '../../session/screen.ts';
import { termLine, termsOfQuestion } from '../../teaching/terms-in.ts';
import { HELP } from './command.ts';
import { paragraph } from './paragraph.ts';

/** Why a question is asked, and what reads its answer. */
export function whyLines(screen: Screen, width: number): readonly string[] {
  if (screen.kind !== 'question')
    return paragraph('No question is asked here; "help" lists what can be typed.', width);
  const { words, readBy } = screen.why;
  const reads = readBy.length === 0 ? '' : ` It is read by: ${readerNames(readBy).join(', ')}.`;
  return [
    ...paragraph(`${words}${reads}`, width),
    ...termsOfQuestion(screen).flatMap((id) => paragraph(termLine(id), width, '  ')),
  ];
}

/** What can be typed anywhere. */
export const helpLines = (width: number): readonly string[] =>
  HELP.flatMap(([command, does]) => paragraph(does, width, `  ${command.padEnd(9)}  `));
