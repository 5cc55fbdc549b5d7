import type { Catalog } from '../../catalog/catalog.ts';
import { decide } from '../../rules/decide.ts';
import { type Bounded, type Decision, FINDINGS, NEEDS, VERDICTS } from '../../rules/decision.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { type Standing, standingOf } from '../../rules/standing.ts';
import type { Judged } from '../../rules/weighing/judged.ts';
import { type WorkedWay, workedOutcome } from '../examples/worked-check.ts';
import { MEASURE_UNITS } from '../measure-units.ts';
import type { Asked, Lesson, LessonStep } from './lesson.ts';
import { featureKey, featureWay, ruleKey } from './rule-key.ts';

/** What a step comes to. */
export type StepKey =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly unit: string;
      readonly worked: WorkedWay | null;
    }
  | {
      readonly kind: 'choice';
      readonly value: string;
      readonly options: readonly string[];
      readonly worked: WorkedWay | null;
    };

/** A lesson with the key of each step, and the decision that they are of; or what of it cannot be worked out. */
export type PreparedLesson =
  | ({ readonly ok: true; readonly keys: readonly StepKey[] } & DecidedLesson)
  | { readonly ok: false; readonly faults: readonly string[] };

/** Works out what every step of a lesson comes to on a catalog. Steps that cannot be worked out are named, by their number. */
export function prepareLesson(lesson: Lesson, catalog: Catalog): PreparedLesson {
  const among = subsetOf(catalog, lesson);
  const missing = [
    ...lesson.machines
      .filter((id) => !catalog.machines.some((row) => row.id === id))
      .map((id) => `there is no machine ${id} in the catalog`),
    ...lesson.rotaries
      .filter((id) => !catalog.rotaries.some((row) => row.id === id))
      .map((id) => `there is no rotary ${id} in the catalog`),
  ];
  if (missing.length > 0) return { ok: false, faults: missing };
  const standing = standingOf(lesson.answers, among);
  const decision = decide(lesson.answers, among, { all: true, traces: false });
  const decided: DecidedLesson = { lesson, standing, decision };
  const found = lesson.steps.map((step, index): StepKey | string => {
    const key = keyOf(step, decided);
    return typeof key === 'string' ? `step ${index + 1}: ${key}` : key;
  });
  const faults = found.filter((each): each is string => typeof each === 'string');
  if (faults.length > 0) return { ok: false, faults };
  const keys = found.filter((each): each is StepKey => typeof each !== 'string');
  return { ok: true, keys, ...decided };
}

/** The rows that the lesson names, so that nothing else is decided about. */
function subsetOf(catalog: Catalog, { machines, rotaries }: Lesson): Catalog {
  const kept = <Row extends { readonly id: string }>(
    rows: readonly Row[],
    ids: readonly string[],
  ): readonly Row[] => (ids.length === 0 ? rows : rows.filter(({ id }) => ids.includes(id)));
  return {
    ...catalog,
    machines: kept(catalog.machines, machines),
    rotaries: kept(catalog.rotaries, rotaries),
  };
}

/** A lesson on its catalog, judged and decided. */
export interface DecidedLesson {
  readonly lesson: Lesson;
  readonly standing: Standing;
  readonly decision: Decision;
}

function keyOf({ asked, on }: LessonStep, decided: DecidedLesson): StepKey | string {
  const { lesson, standing, decision } = decided;
  const id = on ?? lesson.on;
  const arrangement = standing.judged.find((each) => each.id === id);
  if (arrangement === undefined) return `there is no arrangement ${id}`;
  switch (asked.kind) {
    case 'number':
    case 'verdict':
      return checkKey(asked, arrangement, lesson);
    case 'class': {
      const value = decision.classes.find((each) => each.class === asked.class)?.finding;
      return value === undefined
        ? `nothing is found of ${asked.class}`
        : { kind: 'choice', value, options: FINDINGS, worked: null };
    }
    case 'rule':
    case 'rule number':
      return ruleKey(asked, decided);
    case 'feature number':
      return featureKey(asked, decided, arrangement);
    case 'feature': {
      const listed = decision.arrangements.find((each) => each.id === id);
      const value = listed?.features.find(({ feature }) => feature === asked.feature)?.need;
      return value === undefined
        ? `nothing is said of ${asked.feature}`
        : { kind: 'choice', value, options: NEEDS, worked: featureWay(asked.feature, decided, arrangement) };
    }
    case 'measure': {
      const value: Bounded | undefined = decision.arrangements.find((each) => each.id === id)?.measures[
        asked.measure
      ];
      return typeof value === 'number'
        ? { kind: 'number', value, unit: MEASURE_UNITS[asked.measure], worked: null }
        : `${asked.measure} is not known`;
    }
  }
}

function checkKey(
  asked: Extract<Asked, { check: unknown }>,
  judged: Judged,
  { answers }: Lesson,
): StepKey | string {
  const outcome = outcomeOf(judged, asked.check, asked.part);
  if (outcome === undefined)
    return `the check ${asked.check} is not about ${asked.part ?? 'the arrangement'}`;
  const family = answers.parts.find(({ name }) => name === asked.part) ?? null;
  const worked = workedOutcome(outcome, family);
  if (asked.kind === 'verdict') return { kind: 'choice', value: outcome.verdict, options: VERDICTS, worked };
  if (worked === null) return `the numbers of ${asked.check} are not known`;
  const { unit } = worked.formula;
  return { kind: 'number', value: worked.worked[asked.side], unit, worked };
}

function outcomeOf({ own, families }: Judged, check: string, part: string | null): Outcome | undefined {
  const all = part === null ? own : families.find(({ family }) => family.name === part)?.outcomes;
  return all?.find((each) => each.check.id === check);
}
