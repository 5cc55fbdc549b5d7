import { type Block, heading, list, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, type Inline, number, say, words } from '../../report/blocks/inline.ts';
import { CAUTION_WORDS } from '../../report/wording/cautions.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { FULL_POINTS } from '../lessons/run-lesson.ts';
import { CHECK_LESSONS } from '../words/check-lessons.ts';
import type { Sheet } from './sheet.ts';

const workedHead = ({ ready: { lesson }, options }: Sheet) => ({
  title: lesson.title,
  about: lesson.about,
  name: options.name,
  seed: options.seed,
  points: lesson.steps.length * FULL_POINTS,
});

/** The line by which a sheet and its key find each other. */
const callNumber = ({ options: { seed } }: Sheet): readonly Inline[] =>
  seed === null
    ? say`Sheet ${codeData(at('name'))}, as it is written.`
    : say`Sheet ${codeData(at('name'))}, variant ${number(at('seed'), '')}.`;

const INVENTED = 'The shop, its parts and their numbers are invented.';

/** What stands at the top of a worksheet. */
export function sheetHead(sheet: Sheet): Explained {
  const careful = carefulOf(sheet);
  const blocks: readonly Block[] = [
    heading(1, [data(at('title'))]),
    paragraph([data(at('about'))]),
    table(
      [
        [say`Name`, 'left'],
        [say`Class`, 'left'],
        [say`Date`, 'left'],
        [say`Points`, 'right'],
      ],
      [[[], [], [], say`of ${number(at('points'), '')}`]],
    ),
    paragraph(say`${callNumber(sheet)} ${words(INVENTED)}`),
    paragraph(
      say`Look up each number under its label and put it into the formulas, line by line. ${words(unitsLine(sheet))}`,
    ),
    ...(asksVerdicts(sheet) ? [paragraph([words(VERDICTS_MEAN)])] : []),
    ...(careful.length === 0 ? [] : [heading(2, say`Careful`), list(careful.map((line) => [words(line)]))]),
    heading(2, say`What is given`),
  ];
  return { root: rootOf(sheet.ready.decision, workedHead(sheet)), blocks };
}

const asksVerdicts = ({ ready: { lesson } }: Sheet): boolean =>
  lesson.steps.some(({ asked }) => asked.kind === 'verdict');

const VERDICTS_MEAN =
  'A verdict says holds; or holds if, where a measure that is to be had makes it good; or fails; or open, where a number that it needs is missing.';

const unitsLine = ({ options: { units } }: Sheet): string =>
  units === 'mm'
    ? 'Formulas take the units in which they are given.'
    : 'Formulas take the metric number; inches and pounds stand behind it in brackets.';

/** What can hurt somebody about the checks that the sheet is on, and who decides then. */
function carefulOf({ ready: { lesson, decision } }: Sheet): readonly string[] {
  const told = lesson.steps.flatMap(({ asked }) =>
    'check' in asked ? (CHECK_LESSONS[asked.check].careful ?? []) : [],
  );
  const chips = decision.cautions.includes('combustible-chips') ? [CAUTION_WORDS['combustible-chips']] : [];
  const all = [...new Set([...told, ...chips])];
  return all.length === 0 ? [] : [...all, CAUTION_WORDS['licensed-trades-decide'], CAUTION_WORDS.learners];
}

/** What stands at the top of its key. */
export function keyHead(sheet: Sheet): Explained {
  const blocks: readonly Block[] = [
    heading(1, say`Solutions: ${data(at('title'))}`),
    paragraph(say`${callNumber(sheet)} ${words(INVENTED)} ${number(at('points'), '')} points in all.`),
  ];
  return { root: rootOf(sheet.ready.decision, workedHead(sheet)), blocks };
}
