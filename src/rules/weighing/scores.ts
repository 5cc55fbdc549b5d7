import type { Interval } from '../../quantities/interval.ts';
import type { Measure } from '../../questions/answers.ts';
import type { MeasureValues } from './judged.ts';

/** What can be ranked: an id and its measures. `surely`: it is in the running for every value of the unknowns. */
export interface Ranked {
  readonly id: string;
  readonly surely: boolean;
  readonly measures: MeasureValues;
  /**
   * A measure at each corner of what is the same for all of them and not known. Where two have it, they are
   * held against each other corner by corner: a shared unknown that favors neither leaves nothing open.
   */
  readonly atCorners?: Readonly<Partial<Record<Measure, readonly Interval[]>>>;
  /** another beats it on every measure for some value of the unknowns, so that it never surely wins */
  readonly perhapsBeaten?: boolean;
}

/** More is better for these, less for the others. */
export const MORE_IS_BETTER: Readonly<Record<Measure, boolean>> = {
  coverage: true,
  viseStations: true,
  payback: false,
  price: false,
  floorArea: false,
  swapHours: false,
  margin: true,
};

const NULL: Interval = { low: Number.NEGATIVE_INFINITY, high: Number.NEGATIVE_INFINITY };

/** A measure turned so that more is better; null ranks last. */
export function scoreOn(measure: Measure, value: Interval | null): Interval {
  if (value === null) return NULL;
  return MORE_IS_BETTER[measure] ? value : { low: -value.high, high: -value.low };
}

export interface Scores {
  readonly whole: Interval;
  readonly corners: readonly Interval[] | null;
}

export const scoresOn = (measure: Measure, { measures, atCorners }: Ranked): Scores => ({
  whole: scoreOn(measure, measures[measure]),
  corners: atCorners?.[measure]?.map((each) => scoreOn(measure, each)) ?? null,
});

/** Is it so for every pair of scores that the two can have together? */
export function throughout(a: Scores, b: Scores, so: (x: Interval, y: Interval) => boolean): boolean {
  if (a.corners === null || b.corners === null) return so(a.whole, b.whole);
  const others = b.corners;
  return a.corners.every((x, index) => so(x, others[index] ?? b.whole));
}
