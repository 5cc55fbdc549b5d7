import { SECTION_TITLES } from '../../questions/sections.ts';
import { notAskedLead, notAskedReason } from '../../report/asking-words.ts';
import type { ReviewLine } from '../../session/review.ts';
import type { Screen } from '../../session/screen.ts';
import { paragraph } from './paragraph.ts';

/** Every answer under its heading, with its number, where it comes from, and what does not apply now. */
export function reviewText(screen: Screen & { kind: 'review' }, width: number): readonly string[] {
  const lines: string[] = [];
  let heading = '';
  const skipped = screen.lines.filter(({ state }) => state === 'not asked');
  for (const line of screen.lines) {
    if (line.state === 'not asked') continue;
    const own = line.part ?? SECTION_TITLES[line.section];
    if (own !== heading) lines.push(...paragraph(own, width));
    heading = own;
    const number = line.number === null ? '' : String(line.number);
    lines.push(...paragraph(lineText(line), width, `${number.padStart(4)}  `));
  }
  if (screen.settled !== null && skipped.length > 0) {
    lines.push(...paragraph(notAskedLead(screen.settled), width));
    for (const { number, part, title, readBy } of skipped) {
      const named = part === null ? title : `${part}: ${title}`;
      const why = screen.settled.isProven ? `: ${notAskedReason(readBy, screen.settled)}` : '';
      lines.push(...paragraph(`${named}${why}`, width, `${String(number ?? '').padStart(4)}  `));
    }
  }
  const { open } = screen;
  if (open > 0) {
    const words =
      screen.settled === null
        ? `${open === 1 ? '1 question has' : `${open} questions have`} no answer yet; "goto open" goes to the first.`
        : `${open === 1 ? '1 question' : `${open} questions`} can still change the result; "goto open" goes to the next.`;
    lines.push(...paragraph(words, width));
  }
  return lines;
}

const MARKS: Readonly<Record<ReviewLine['state'], string>> = {
  typed: '',
  usual: ' (usual answer)',
  'not sure': ' (not sure)',
  open: '',
  'not asked': '',
  ignored: ' (does not apply now; kept, but ignored)',
};

function lineText({ title, words, state, objection }: ReviewLine): string {
  if (objection !== null) return `${title}: ${words ?? ''} (asked again) ${objection}`;
  if (state !== 'open') return `${title}: ${words ?? ''}${MARKS[state]}`;
  return words === null ? `${title}: no answer yet` : `${title}: ${words} (usual answer, not asked yet)`;
}
