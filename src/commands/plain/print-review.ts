import { SECTION_TITLES } from '../../questions/sections.ts';
import { notAskedLead, notAskedReason, TAKEN_LEAD } from '../../report/asking-words.ts';
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
  const { settled } = screen;
  if (settled !== null) {
    const [sure, taken] = [
      skipped.filter((line) => line.taken === null),
      skipped.filter((line) => line.taken !== null),
    ];
    lines.push(
      ...listed(
        notAskedLead(settled),
        sure,
        (line) => (settled.isProven ? notAskedReason(line.readBy, settled) : null),
        width,
      ),
      ...listed(TAKEN_LEAD, taken, (line) => line.taken, width),
    );
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

/** Lines that were not asked under what is said of all of them; nothing where there are none. */
function listed(
  lead: string,
  lines: readonly ReviewLine[],
  wordsOf: (line: ReviewLine) => string | null,
  width: number,
): readonly string[] {
  if (lines.length === 0) return [];
  const each = lines.flatMap((line) => {
    const named = line.part === null ? line.title : `${line.part}: ${line.title}`;
    const said = wordsOf(line);
    const number = String(line.number ?? '').padStart(4);
    return paragraph(said === null ? named : `${named}: ${said}`, width, `${number}  `);
  });
  return [...paragraph(lead, width), ...each];
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
