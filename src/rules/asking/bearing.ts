import type { Measure } from '../../questions/answers.ts';
import type { CheckId } from '../checks/ids.ts';
import type { Gap } from '../decision.ts';
import { gapsOf, type Outcome } from '../judging/outcome.ts';
import type { Standing } from '../standing.ts';
import type { Judged } from '../weighing/judged.ts';
import { openMeasures } from '../weighing/open-measures.ts';
import { otherSettings } from '../weighing/unknowns.ts';

/** An answer that is not known, and how it bears on one arrangement. */
export interface Bearing {
  /** its path without indices. Example: 'shop.bay' */
  readonly answer: string;
  /** whether the arrangement passes at all may hang on it, or only where it comes on this measure */
  readonly on: 'passing' | Measure;
  readonly check: CheckId | null;
}

/** The answers behind these gaps, each once. Example: shop.bay[0], shop.bay[1] → ['shop.bay'] */
export const answersIn = (gaps: readonly Gap[]): readonly string[] => [
  ...new Set(gaps.flatMap(({ path, ask }) => (ask === 'user' ? [path.replace(/\[\d+\]$/, '')] : []))),
];

/** Checks that are open and count, those of the arrangement and of its families. */
export const openOf = (outcomes: readonly Outcome[]): readonly Outcome[] =>
  outcomes.filter(({ verdict, advisory }) => verdict === 'open' && !advisory);

/**
 * Everything that is not known and may change what becomes of an arrangement that may win. While it is the only one that
 * may pass, what it is measured by changes nothing.
 */
export function bearingsOn(judged: Judged, { world, running }: Standing): readonly Bearing[] {
  const { own, families, coverage } = judged;
  const outcomes = [...own, ...families.flatMap((each) => each.outcomes), ...otherSettings(judged, world)];
  const found: Bearing[] = openOf(outcomes).flatMap((outcome) =>
    answersIn(gapsOf(outcome)).map((answer) => ({ answer, on: 'passing', check: outcome.check.id })),
  );
  const add = (on: Bearing['on'], gaps: readonly Gap[]): void => {
    for (const answer of answersIn(gaps)) found.push({ answer, on, check: null });
  };
  const measures = openMeasures(judged, world);
  if (coverage.low < world.shop.assume.leastCoverage)
    for (const { measure, gaps } of measures) if (measure === 'coverage') add('passing', gaps);
  if (running.length < 2) return found;
  for (const { measure, gaps } of measures) add(measure, gaps);
  const { low, high } = world.shop.visesWanted;
  if (low !== high) found.push({ answer: 'work.visesWanted', on: 'viseStations', check: null });
  return found;
}
