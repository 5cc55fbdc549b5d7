import { type Block, heading, list, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, type Inline, number, say, verdictSign, words } from '../../report/blocks/inline.ts';
import { at } from '../explained.ts';
import { givenTable, type ShownFormula } from '../topics/formula-blocks.ts';
import { type ClassPage, isBefore } from './class-pages.ts';
import { type ClassRun, classScore, pageAt } from './class-run.ts';
import { feedbackLines, givenOf, type LessonLook, linesOf, resultBlock, shownOf } from './lesson-words.ts';
import { type ReadyLesson, stepAt } from './run-lesson.ts';
import type { StepKey } from './step-key.ts';
import type { Change } from './what-if.ts';

/** What a page says, as paragraphs of lines: whoever shows them puts room between. */
type Paragraphs = readonly (readonly string[])[];

const paragraphsOf = (blocks: readonly Block[], worked: unknown, look: LessonLook): Paragraphs =>
  blocks.map((block) => linesOf([block], worked, look).slice(0, -1));

/** The page that a class is at. */
export function classLines(ready: ReadyLesson, run: ClassRun, look: LessonLook): Paragraphs {
  const { lesson } = ready;
  const current = stepAt(ready, run);
  if (current === null) return endOf(ready, run, look);
  const page = pageAt(ready, run);
  const key = run.trial?.key ?? current.key;
  const given = givenOf(key, current.step);
  const guess = run.guesses[run.index];
  const root = {
    ...(page.kind === 'given' ? given : shownOf(key)),
    title: lesson.title,
    about: lesson.about,
    ask: current.step.ask,
    step: run.index + 1,
    of: lesson.steps.length,
    why: current.step.why,
    hint: page.kind === 'hint' ? (current.step.hints[page.index] ?? '') : '',
    value: key.value,
  };
  const told =
    guess === undefined || guess.feedback === null || !(isBefore(page) || page.kind === 'result')
      ? []
      : [feedbackLines(ready, { index: run.index, feedback: guess.feedback }, look).slice(0, -1)];
  return [...paragraphsOf(pageBlocks(page, key, given), root, look), ...told];
}

function pageBlocks(page: ClassPage, key: StepKey, given: ShownFormula | null): readonly Block[] {
  switch (page.kind) {
    case 'title':
      return [heading(1, [data(at('title'))]), paragraph([data(at('about'))])];
    case 'question':
      return [
        heading(2, say`Step ${number(at('step'), '')} of ${number(at('of'), '')}`),
        paragraph([data(at('ask'))]),
        ...(key.kind === 'choice' ? [list(key.options.map((option) => [words(option)]))] : []),
      ];
    case 'given':
      return given === null ? [] : [givenTable(given, 'Given')];
    case 'hint':
      return [paragraph(say`Hint: ${data(at('hint'))}`)];
    case 'defined':
      return definedBlocks(key);
    case 'formula':
      return lineBlocks(page.index);
    case 'numbers':
      return [...lineBlocks(page.index), ...numberBlocks(page.index, key)];
    case 'result':
      return resultBlocks(key);
    case 'why':
      return [paragraph([data(at('why'))])];
    case 'end':
      return [];
  }
}

const definedBlocks = ({ worked }: StepKey): readonly Block[] =>
  (worked?.formula.definitions ?? []).map((_, index) => {
    const own = at('definitions', index);
    return paragraph(say`${codeData([...own, 'formula'])}: ${data([...own, 'words'])}`);
  });

const lineBlocks = (index: number): readonly Block[] => [
  paragraph([data(at('steps', index, 'words'))]),
  paragraph([codeData(at('steps', index, 'formula'))]),
];

function numberBlocks(index: number, { worked }: StepKey): readonly Block[] {
  const unit = worked?.formula.steps[index]?.unit ?? '';
  return [
    paragraph([codeData(at('steps', index, 'putIn'))]),
    paragraph(say`= ${number(at('steps', index, 'value'), unit)}`),
  ];
}

function resultBlocks(key: StepKey): readonly Block[] {
  const { worked } = key;
  if (worked?.outcome == null) return [resultBlock(key)];
  const { unit } = worked.formula;
  return [
    resultBlock(key),
    paragraph(say`Needed ${number(at('need'), unit)}, there is ${number(at('have'), unit)}.`),
    paragraph(say`Margin ${number(at('margin'), unit)}: ${verdictSign(worked.outcome.verdict)}.`),
  ];
}

function endOf({ lesson }: ReadyLesson, run: ClassRun, look: LessonLook): Paragraphs {
  const score = classScore(run);
  return paragraphsOf(
    [
      heading(1, [data(at('title'))]),
      paragraph(say`The lesson is at its end.`),
      ...(score === null
        ? []
        : [
            paragraph(
              say`The room has ${number(at('points'), '')} of ${number(at('of'), '')} points, in the steps that it guessed.`,
            ),
          ]),
    ],
    { title: lesson.title, ...score },
    look,
  );
}

/** What is tried, and what it comes to: before and with it. Nothing where nothing is tried. */
export function trialLines(ready: ReadyLesson, run: ClassRun, look: LessonLook): Paragraphs {
  const { trial } = run;
  const current = stepAt(ready, run);
  if (trial === null || current === null) return [];
  const root = { changes: trial.changes, before: sidesOf(current.key), now: sidesOf(trial.key) };
  return paragraphsOf([...changeBlocks(trial.changes), besideTable(current.key, trial.key)], root, look);
}

/** What is tried, a sentence for each number. */
export const tryingLines = ({ trial }: ClassRun, look: LessonLook): Paragraphs =>
  trial === null ? [] : paragraphsOf(changeBlocks(trial.changes), { changes: trial.changes }, look);

const changeBlocks = (changes: readonly Change[]): readonly Block[] =>
  changes.map(({ unit }, index) => {
    const own = at('changes', index);
    return paragraph(
      say`What if: ${data([...own, 'words'])} ${number([...own, 'to'], unit)} instead of ${number([...own, 'value'], unit)}`,
    );
  });

const sidesOf = (key: StepKey): unknown => ({ value: key.value, ...key.worked?.worked });

function besideTable(before: StepKey, now: StepKey): Block {
  const value = (side: 'before' | 'now', key: StepKey): readonly Inline[] => [
    key.kind === 'number' ? number(at(side, 'value'), key.unit) : data(at(side, 'value')),
  ];
  const compared = (title: string, name: 'need' | 'have' | 'margin'): readonly (readonly Inline[])[] => [
    [words(title)],
    [number(at('before', name), before.worked?.formula.unit ?? '')],
    [number(at('now', name), now.worked?.formula.unit ?? '')],
  ];
  const verdict = ({ worked }: StepKey): readonly Inline[] => [
    worked?.outcome == null ? words('') : verdictSign(worked.outcome.verdict),
  ];
  const both = before.worked?.outcome != null && now.worked?.outcome != null;
  return table(
    [
      [[words('')], 'left'],
      [say`Before`, 'right'],
      [say`With it`, 'right'],
    ],
    both
      ? [
          compared('Needed', 'need'),
          compared('There is', 'have'),
          compared('Margin', 'margin'),
          [say`Verdict`, verdict(before), verdict(now)],
        ]
      : [[say`Comes to`, value('before', before), value('now', now)]],
  );
}
