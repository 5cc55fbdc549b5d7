import type { LengthUnits } from '../../quantities/kinds.ts';
import { givenNumbers } from '../formula/work-out.ts';
import type { LessonStep } from './lesson.ts';
import { readPrediction } from './read-prediction.ts';
import type { PreparedLesson, StepKey } from './step-key.ts';
import { type WouldBe, wouldBeRight } from './would-be-right.ts';

/** A lesson that is ready to be run. */
export type ReadyLesson = Extract<PreparedLesson, { ok: true }>;

export const FULL_POINTS = 10;
const COST = 3;
const LEAST_POINTS = 1;

/** What the last event brought about. */
export type LessonFeedback =
  | { readonly kind: 'right'; readonly points: number }
  | {
      readonly kind: 'wrong';
      readonly given: number | string;
      readonly is: string | null;
      readonly wouldBe: WouldBe | null;
    }
  | { readonly kind: 'unreadable'; readonly why: string }
  | { readonly kind: 'hint'; readonly text: string }
  | { readonly kind: 'no hint' }
  | { readonly kind: 'told' };

/** How a step was brought to its end. */
interface StepTaken {
  /** the day, as it was kept: 2026-11-26; left out: nobody wrote it down */
  readonly on?: string | undefined;
  /** what was right, as it was typed; null: it was revealed */
  readonly answer: string | null;
  readonly hints: number;
  readonly wrong: number;
}

/** How far somebody has come in a lesson: plain data, so that it can be kept and gone on with. */
export interface LessonRun {
  /** of the steps */
  readonly index: number;
  /** predict: nothing is revealed yet; revealed: the way is shown; done: the lesson is at its end */
  readonly phase: 'predict' | 'revealed' | 'done';
  readonly hints: number;
  readonly wrong: number;
  /** of each step that is revealed */
  readonly scores: readonly number[];
  /** the same steps; null: it was not written down yet when that step was taken */
  readonly taken: readonly (StepTaken | null)[];
  readonly feedback: LessonFeedback | null;
}

export type LessonEvent =
  | { readonly type: 'predict'; readonly text: string; readonly units: LengthUnits }
  | { readonly type: 'hint' }
  | { readonly type: 'reveal' }
  | { readonly type: 'next' };

/** Before the first step. */
export const LESSON_START: LessonRun = {
  index: 0,
  phase: 'predict',
  hints: 0,
  wrong: 0,
  scores: [],
  taken: [],
  feedback: null,
};

/** The lesson after an event. Pure; an event that means nothing where it comes changes nothing. */
export function runLesson(ready: ReadyLesson, run: LessonRun, event: LessonEvent): LessonRun {
  if (run.phase === 'done') return run;
  if (event.type === 'next') return run.phase === 'revealed' ? nextStep(ready, run) : run;
  if (run.phase === 'revealed') return run;
  switch (event.type) {
    case 'predict':
      return predicted(ready, run, event);
    case 'hint':
      return hinted(ready, run);
    case 'reveal':
      return revealed(run, null, 0, { kind: 'told' });
  }
}

/** The step that a run stands at, with its key; null behind the last. */
export function stepAt(
  { lesson, keys }: ReadyLesson,
  { index }: Pick<LessonRun, 'index'>,
): { readonly step: LessonStep; readonly key: StepKey } | null {
  const [step, key] = [lesson.steps[index], keys[index]];
  return step === undefined || key === undefined ? null : { step, key };
}

/** What a right prediction is worth now: hints and wrong ones cost. */
export const pointsNow = ({ hints, wrong }: LessonRun): number =>
  Math.max(LEAST_POINTS, FULL_POINTS - COST * (hints + wrong));

function predicted(
  ready: ReadyLesson,
  run: LessonRun,
  { text, units }: Extract<LessonEvent, { type: 'predict' }>,
): LessonRun {
  const current = stepAt(ready, run);
  if (current === null) return run;
  const { step, key } = current;
  const read = readPrediction(key, text, units);
  if (!read.ok) return { ...run, feedback: { kind: 'unreadable', why: read.why } };
  if (isRight(key, read.value, step.tolerance)) {
    const points = pointsNow(run);
    return revealed(run, text.trim().slice(0, LONGEST_ANSWER), points, { kind: 'right', points });
  }
  const wouldBe = whatWouldBe(key, read.value, sideAsked(step.asked, key));
  const is = typeof read.value === 'number' ? whatItIs(key, read.value) : null;
  return { ...run, wrong: run.wrong + 1, feedback: { kind: 'wrong', given: read.value, is, wouldBe } };
}

/** Of a check the side that is asked for; of a rule its way ends where it is asked for. */
const sideAsked = (asked: LessonStep['asked'], key: StepKey): 'need' | 'have' | 'margin' =>
  asked.kind === 'number' ? asked.side : key.kind === 'number' ? 'need' : 'margin';

/** So much of what was typed is kept. */
const LONGEST_ANSWER = 200;

function revealed(
  run: LessonRun,
  answer: string | null,
  points: number,
  feedback: LessonFeedback,
): LessonRun {
  const { hints, wrong, scores, taken } = run;
  const before = scores.map((_, index) => taken[index] ?? null);
  return {
    ...run,
    phase: 'revealed',
    scores: [...scores, points],
    taken: [...before, { answer, hints, wrong }],
    feedback,
  };
}

/** What a wrong number is instead: something that is given, or a step on the way. */
function whatItIs({ worked, kind }: StepKey, given: number): string | null {
  if (worked === null || kind !== 'number') return null;
  const { formula, values, worked: way } = worked;
  const all = [...givenNumbers(formula, values), ...way.steps];
  return (
    all.find(({ value }) => value !== 0 && Math.abs(value - given) <= 1e-6 * Math.abs(value))?.words ?? null
  );
}

/** Within the tolerance of what comes out; of nothing at all within a millionth. Words have to be the same. */
function isRight(key: StepKey, given: number | string, tolerance: number): boolean {
  if (key.kind === 'choice') return given === key.value;
  const allowed = Math.max((Math.abs(key.value) * tolerance) / 100, 1e-6);
  return typeof given === 'number' && Math.abs(given - key.value) <= allowed * (1 + 1e-9);
}

/** For a number what would give it; for a verdict what would bring the check to its line. */
function whatWouldBe(
  { worked, kind }: StepKey,
  given: number | string,
  side: 'need' | 'have' | 'margin',
): WouldBe | null {
  if (worked === null) return null;
  if (kind === 'number') return typeof given === 'number' ? wouldBeRight(worked, side, given) : null;
  if (worked.outcome === null) return null;
  const holds = worked.worked.margin >= 0;
  const wanted =
    given === 'holds' ? 0 : given === 'fails' && holds ? -BARELY * Math.abs(worked.worked.need) : null;
  return wanted === null ? null : wouldBeRight(worked, 'margin', wanted);
}

/** So little is missing where a check just fails. */
const BARELY = 1e-3;

function hinted({ lesson }: ReadyLesson, run: LessonRun): LessonRun {
  const text = lesson.steps[run.index]?.hints[run.hints];
  if (text === undefined) return { ...run, feedback: { kind: 'no hint' } };
  return { ...run, hints: run.hints + 1, feedback: { kind: 'hint', text } };
}

function nextStep({ lesson }: ReadyLesson, { index, scores, taken }: LessonRun): LessonRun {
  const next = index + 1;
  const phase = next < lesson.steps.length ? 'predict' : 'done';
  return { ...LESSON_START, index: next, phase, scores, taken };
}

/** Points so far, and how many there could have been. */
export const scoreOf = ({ scores }: LessonRun): { readonly points: number; readonly of: number } => ({
  points: scores.reduce((sum, each) => sum + each, 0),
  of: scores.length * FULL_POINTS,
});
