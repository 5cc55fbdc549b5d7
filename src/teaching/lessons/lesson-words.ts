import type { LengthUnits } from '../../quantities/kinds.ts';
import { type Block, heading, list, paragraph } from '../../report/blocks/block.ts';
import { data, type Inline, number, say, strong, words } from '../../report/blocks/inline.ts';
import type { TextLook } from '../../report/exports/text-blocks.ts';
import { at, rootOf } from '../explained.ts';
import { explanationLines } from '../exports.ts';
import { exampleDecision } from '../topics/base.ts';
import { givenTable, type ShownFormula, shownFormula, wayBlocks } from '../topics/formula-blocks.ts';
import type { LessonStep } from './lesson.ts';
import {
  FULL_POINTS,
  type LessonFeedback,
  type LessonRun,
  pointsNow,
  type ReadyLesson,
  scoreOf,
  stepAt,
} from './run-lesson.ts';
import type { StepKey } from './step-key.ts';
import { topicOfStep } from './step-topic.ts';

/** How lines are laid out, and in which units. */
export interface LessonLook extends TextLook {
  readonly units: LengthUnits;
}

/** Blocks with what they look up, as lines; an empty one behind each. */
export function linesOf(
  blocks: readonly Block[],
  worked: unknown,
  { units, ...look }: LessonLook,
): readonly string[] {
  return explanationLines({ root: rootOf(exampleDecision(), worked), blocks }, look, units);
}

/** What the lesson is about, and how it is gone through. */
export const lessonHead = ({ lesson }: ReadyLesson, look: LessonLook): readonly string[] =>
  linesOf(
    [
      heading(1, [data(at('title'))]),
      paragraph([data(at('about'))]),
      paragraph(
        say`Type what you think comes out. ${strong(say`hint`)} helps and costs points, ${strong(say`reveal`)} shows the way for none, ${strong(say`quit`)} leaves; your points are kept.`,
      ),
    ],
    { title: lesson.title, about: lesson.about },
    look,
  );

/** The question of a step, and what is given for it. */
export function stepLines(ready: ReadyLesson, run: LessonRun, look: LessonLook): readonly string[] {
  const key = stepAt(ready, run)?.key;
  if (key === undefined) return [];
  const place = { step: run.index + 1, of: ready.lesson.steps.length };
  return [
    ...linesOf([heading(2, say`Step ${number(at('step'), '')} of ${number(at('of'), '')}`)], place, look),
    ...askLines(ready, run, look),
    ...givenLines(ready, run, look),
    ...(key.kind === 'choice' ? linesOf([list(key.options.map((option) => [words(option)]))], {}, look) : []),
  ];
}

/** What is asked, and what it is worth now; hints that were taken. */
export function askLines(ready: ReadyLesson, run: LessonRun, look: LessonLook): readonly string[] {
  const step = stepAt(ready, run)?.step;
  return step === undefined
    ? []
    : linesOf(
        [paragraph(say`${data(at('ask'))} (${number(at('points'), '')} points)`)],
        { ask: step.ask, points: pointsNow(run) },
        look,
      );
}

/** Hints that were taken in a step. */
export function hintLines(ready: ReadyLesson, run: LessonRun, look: LessonLook): readonly string[] {
  const hints = stepAt(ready, run)?.step.hints.slice(0, run.hints) ?? [];
  return linesOf(
    hints.map((_, index) => paragraph(say`Hint: ${data(at('hints', index))}`)),
    { hints },
    look,
  );
}

/** The numbers that a step gives; nothing where it has no formula. */
export function givenLines(ready: ReadyLesson, run: LessonRun, look: LessonLook): readonly string[] {
  const current = stepAt(ready, run);
  const given = current === null ? null : givenOf(current.key, current.step);
  return given === null || given.given.length === 0 ? [] : linesOf([givenTable(given, 'Given')], given, look);
}

/** What is printed of the formula of a step; null where it has none. */
export const shownOf = ({ worked }: StepKey): ShownFormula | null =>
  worked === null ? null : shownFormula(worked.formula, worked.values, worked.worked);

/** The same before anything is said: where the answer is itself one of the given numbers it is not given. */
export function givenOf(key: StepKey, { asked }: LessonStep): ShownFormula | null {
  const shown = shownOf(key);
  if (shown === null || asked.kind !== 'number' || asked.side === 'margin') return shown;
  const own = key.worked?.formula[asked.side];
  return { ...shown, given: shown.given.filter(({ symbol }) => symbol !== own) };
}

const unitOf = (key: StepKey | undefined): string => (key?.kind === 'number' ? key.unit : '');

/** What the last event brought about. */
export function feedbackLines(
  { keys }: ReadyLesson,
  run: Pick<LessonRun, 'index' | 'feedback'>,
  look: LessonLook,
): readonly string[] {
  const { feedback } = run;
  const unit = unitOf(keys[run.index]);
  if (feedback === null) return [];
  switch (feedback.kind) {
    case 'right':
      return linesOf([paragraph(say`Right: ${number(at('points'), '')} points.`)], feedback, look);
    case 'wrong':
      return linesOf(
        [paragraph([...notRight(feedback.given, unit), ...otherwise(feedback)])],
        feedback,
        look,
      );
    case 'unreadable':
      return linesOf([paragraph([data(at('why'))])], feedback, look);
    case 'hint':
      return linesOf([paragraph(say`Hint: ${data(at('text'))}`)], feedback, look);
    case 'no hint':
      return linesOf([paragraph(say`There is no further hint.`)], feedback, look);
    case 'told':
      return linesOf([paragraph(say`No points for this step.`)], feedback, look);
  }
}

type Wrong = Extract<LessonFeedback, { kind: 'wrong' }>;

const notRight = (given: number | string, unit: string): readonly Inline[] =>
  typeof given === 'number' ? say`Not ${number(at('given'), unit)}.` : say`Not “${data(at('given'))}”.`;

/** What it is instead, and what would have to be otherwise so that it were right. */
function otherwise({ is, wouldBe }: Wrong): readonly Inline[] {
  const instead = is === null ? [] : say` That is: ${data(at('is'))}.`;
  if (wouldBe === null) return is === null ? say` Think again, or take a hint.` : instead;
  return say`${instead} It would be right with this changed alone: ${data(at('wouldBe', 'words'))}
    ${number(at('wouldBe', 'to'), wouldBe.unit)} instead of ${number(at('wouldBe', 'from'), wouldBe.unit)}.`;
}

/** The way, what comes out, and why. */
export function revealedLines(ready: ReadyLesson, run: LessonRun, look: LessonLook): readonly string[] {
  const current = stepAt(ready, run);
  if (current === null) return [];
  const { step, key } = current;
  const shown = shownOf(key);
  const compared = shown === null ? [] : [...wayBlocks(shown), ...comparedBlocks(key, shown.unit)];
  return linesOf(
    [...compared, resultBlock(key), paragraph([data(at('why'))])],
    { ...shown, value: key.value, why: step.why },
    look,
  );
}

/** What is held against each other: need and have of a check, number and line of a rule. */
function comparedBlocks({ kind, worked }: StepKey, unit: string): readonly Block[] {
  if (worked === null) return [];
  if (worked.outcome !== null)
    return [
      paragraph(
        say`Needed ${number(at('need'), unit)}, there is ${number(at('have'), unit)}, margin ${number(at('margin'), unit)}.`,
      ),
    ];
  const { need, have } = worked.formula;
  return kind === 'number'
    ? []
    : [
        paragraph(
          say`${words(need)} is ${number(at('need'), unit)}, ${words(have)} is ${number(at('have'), unit)}.`,
        ),
      ];
}

/** What comes out of a step. */
export const resultBlock = (key: StepKey): Block =>
  paragraph(
    key.kind === 'number' ? say`It is ${number(at('value'), key.unit)}.` : say`It is: ${data(at('value'))}.`,
  );

/** How it went: points of each step, and what is worth reading where some are missing. */
export function endLines(ready: ReadyLesson, run: LessonRun, look: LessonLook): readonly string[] {
  const { steps } = ready.lesson;
  const names = readNext(ready, run);
  const worked = {
    ...scoreOf(run),
    full: FULL_POINTS,
    scores: run.scores,
    asks: steps.map(({ ask }) => ask),
    names,
  };
  return linesOf(
    [
      paragraph(
        say`The lesson is at its end: ${number(at('points'), '')} of ${number(at('of'), '')} points.`,
      ),
      list(
        run.scores.map(
          (_, index) =>
            say`${number(at('scores', index), '')} of ${number(at('full'), '')} points: ${data(at('asks', index))}`,
        ),
      ),
      ...(names.length === 0
        ? []
        : [
            paragraph(say`Read next, where points are missing:`),
            list(names.map((_, index) => say`fivesides explain ${data(at('names', index))}`)),
          ]),
    ],
    worked,
    look,
  );
}

/** What explains the steps that have not all their points, each once. Example: ['check/swing'] */
export function readNext({ lesson }: ReadyLesson, { scores }: LessonRun): readonly string[] {
  const names = lesson.steps.flatMap((step, index) => {
    const name = (scores[index] ?? FULL_POINTS) < FULL_POINTS ? topicOfStep(step) : null;
    return name === null ? [] : [name];
  });
  return [...new Set(names)];
}

/** How far somebody has come, in a sentence: what is said where a lesson is gone on with. */
export const goesOnLines = (run: LessonRun, look: LessonLook): readonly string[] =>
  linesOf(
    [
      paragraph(
        say`You go on at step ${number(at('step'), '')}, with ${number(at('points'), '')} of ${number(at('of'), '')} points.`,
      ),
    ],
    { step: run.index + 1, ...scoreOf(run) },
    look,
  );
