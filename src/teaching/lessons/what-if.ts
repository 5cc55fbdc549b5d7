import { readCarriedCatalog } from '../../catalog/read-carried.ts';
import type { Problem } from '../../documents/problem.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import { readCarriedAnswers } from '../../questions/read-carried.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import { type Ground, withNumber } from '../../rules/flips/value-at.ts';
import type { Changeable } from './changeable.ts';
import { readNumber } from './read-prediction.ts';
import type { ReadyLesson } from './run-lesson.ts';
import { prepareLesson, type StepKey } from './step-key.ts';

/** A given number, and what is tried instead. */
export interface Change extends Changeable {
  readonly to: number;
}

/** What is tried in a step, and what it comes to then: decided anew, never guessed. */
export interface StepTrial {
  readonly changes: readonly Change[];
  readonly key: StepKey;
}

export type Tried =
  | { readonly ok: true; readonly trial: StepTrial }
  | { readonly ok: false; readonly why: string };

/**
 * One given number of a step changed, besides what is tried already. What an answers file or a catalog would not accept is
 * refused in the same words; so is what leaves the step without a result.
 */
export function tryInStep(
  { lesson, decision }: ReadyLesson,
  index: number,
  before: readonly Change[],
  change: { readonly of: Changeable; readonly typed: string; readonly units: LengthUnits },
): Tried {
  const step = lesson.steps[index];
  if (step === undefined) return { ok: false, why: 'There is no step here.' };
  const read = readNumber(change.typed, change.of.unit, change.units);
  if (!read.ok) return read;
  const changes = [...before.filter((each) => !isSame(each, change.of)), { ...change.of, to: read.value }];
  const ground = changes.reduce<Ground>((now, { keys, to }) => withNumber(now, keys, to), {
    answers: lesson.answers,
    catalog: decision.inputs.catalog,
  });
  const problem = problemOf(ground);
  if (problem !== null) return { ok: false, why: whyOf(problem, read.value, change.typed) };
  const prepared = prepareLesson({ ...lesson, answers: ground.answers, steps: [step] }, ground.catalog);
  const [key] = prepared.ok ? prepared.keys : [];
  if (!prepared.ok || key === undefined) {
    const why = prepared.ok ? '' : `: ${prepared.faults.join('; ').replaceAll('step 1: ', '')}`;
    return { ok: false, why: `With that nothing comes out${why}.` };
  }
  return { ok: true, trial: { changes, key } };
}

/** Whether both stand in the same place. */
const isSame = (one: Changeable, other: Changeable): boolean => one.keys.join() === other.keys.join();

/** The first thing that an answers file or a catalog like this would be refused for. */
function problemOf({ answers, catalog }: Ground): Problem | null {
  const rows = readCarriedCatalog(catalog, 'catalog');
  if (!rows.ok) return rows.problems[0] ?? null;
  const read = readCarriedAnswers(answers, 'answers', rows.value);
  return read.ok ? null : (read.problems[0] ?? null);
}

/** As a sentence, without the place in a file that nobody has; where it is about another number, with that. */
function whyOf({ found, expected }: Problem, value: number, typed: string): string {
  const about = found.includes(` is ${value}`) ? `${typed.trim()} is not accepted` : sentenceCase(found);
  return `${about}: ${expected}.`;
}
