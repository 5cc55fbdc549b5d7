import { CHECK_WORDS } from '../../report/wording/checks.ts';
import { MEASURE_WORDS } from '../../report/wording/measures.ts';
import { STAGE_WORDS } from '../../report/wording/stages.ts';
import type { Screen } from '../../session/screen.ts';
import { HELP } from './command.ts';
import { paragraph } from './paragraph.ts';

/** Why a question is asked, and what reads its answer. */
export function whyLines(screen: Screen, width: number): readonly string[] {
  if (screen.kind !== 'question')
    return paragraph('No question is asked here; "help" lists what can be typed.', width);
  const { words, readBy } = screen.why;
  const reads = readBy.length === 0 ? '' : ` It is read by: ${readBy.map(readerName).join(', ')}.`;
  return paragraph(`${words}${reads}`, width);
}

/** What can be typed anywhere. */
export const helpLines = (width: number): readonly string[] =>
  HELP.flatMap(([command, does]) => paragraph(does, width, `  ${command.padEnd(9)}  `));

function readerName(id: string): string {
  const words = { ...STAGES, ...MEASURES, ...CHECKS }[id];
  return words ?? id;
}

const CHECKS = Object.fromEntries(Object.entries(CHECK_WORDS).map(([id, { name }]) => [id, name]));
const STAGES = Object.fromEntries(
  Object.entries(STAGE_WORDS).map(([id, { title }]) => [id, title.toLowerCase()]),
);
const MEASURES = Object.fromEntries(
  Object.entries(MEASURE_WORDS).map(([id, { title }]) => [id, title.toLowerCase()]),
);
