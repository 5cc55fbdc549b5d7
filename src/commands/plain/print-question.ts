import type { Option } from '../../questions/question.ts';
import { becauseLine, toAskWords } from '../../report/asking-words.ts';
import type { QuestionScreen } from '../../session/screen.ts';
import { paragraph } from './paragraph.ts';

/** A question in lines: where it stands, what is asked, what can be answered, what Enter and 'not sure' take. */
export function questionLines(screen: QuestionScreen, width: number): readonly string[] {
  const { progress, section, part, input, because } = screen;
  const place = part === null ? section.title : `${part}: ${section.title.toLowerCase()}`;
  return [
    ...paragraph(`[${progressWords(progress)}] ${place}`, width),
    ...(because === null ? [] : paragraph(becauseLine(because), width)),
    ...paragraph(screen.ask, width),
    ...(screen.hint === '' ? [] : paragraph(screen.hint, width)),
    ...('options' in input ? optionLines(input.options, width) : []),
    ...sideNotes(screen).flatMap((sentence) => paragraph(sentence, width)),
  ];
}

function progressWords({ number, of, needed }: QuestionScreen['progress']): string {
  if (needed === null) return `${number}${of === null ? '' : ` of ${of}`}`;
  return toAskWords(needed);
}

/** More options than this are listed in a running text, so that the question stays in sight. */
const MOST_LINES = 12;
const MOST_NAMES = 60;
const NO_BREAK = '\u00a0';

/** Each option with its number; very many are left to their names. */
export function optionLines(options: readonly Option[], width: number): readonly string[] {
  if (options.length <= MOST_LINES) {
    return options.flatMap(({ label, about }, index) =>
      paragraph(about === '' ? label : `${label}: ${about}`, width, `${String(index + 1).padStart(3)}  `),
    );
  }
  // a number stays on the line of its name
  const names = options
    .slice(0, MOST_NAMES)
    .map(({ label }, index) => `${index + 1} ${label}`.replaceAll(' ', NO_BREAK));
  const rest = options.length - names.length;
  const more = rest === 0 ? '.' : `, and ${rest} more: type the beginning of a name.`;
  return paragraph(`${names.join(', ')}${more}`, width, '  ').map((line) => line.replaceAll(NO_BREAK, ' '));
}

/** What 'not sure' stands for and what Enter takes, in one sentence where that is the same. */
function sideNotes({ input, notSure, current }: QuestionScreen): readonly string[] {
  const several =
    input.kind === 'list' || input.kind === 'order' ? 'Numbers or words, with commas between them. ' : '';
  if (current?.from === 'usual') {
    const isSame = notSure === current.words || notSure === `taken as ${current.words}`;
    if (isSame) return [`${several}Enter or "not sure": ${notSure}.`];
    return [`${several}Not sure: ${notSure}. Enter: ${current.words}.`];
  }
  const soFar = current === null ? '' : ` Enter keeps your answer so far: ${soFarWords(current)}.`;
  return [`${several}Not sure: ${notSure}.${soFar}`];
}

const soFarWords = ({ words, from }: NonNullable<QuestionScreen['current']>): string =>
  from === 'not sure' ? 'not sure' : words;

/** What stands before the cursor. Example: 'Depth from the top (mm) > '. */
export function questionPrompt({ title, input }: QuestionScreen): string {
  if (input.kind === 'yes-no') return `${title} (yes or no) > `;
  if (input.kind === 'quantity' && input.bare !== '') return `${title} (${input.bare}) > `;
  return `${title} > `;
}
