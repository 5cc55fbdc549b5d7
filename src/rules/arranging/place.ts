import type { Interval } from '../../quantities/interval.ts';
import type { Case } from '../judging/case.ts';
import { evaluateSide, evaluateTerm } from '../judging/side.ts';
import { baseEnds, isUpright } from '../sides/base.ts';
import { TIP_REACH } from '../sides/travel.ts';

/** Positions of the rotary center along one axis, from the middle of the table. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** Where both are. */
const meet = (a: Range, b: Range): Range => ({
  from: Math.max(a.from, b.from),
  to: Math.min(a.to, b.to),
});
const isEmpty = ({ from, to }: Range): boolean => from > to + 1e-9;
const orAnywhere = (from: number, to: number): Range => ({
  from: Number.isFinite(from) ? from : Number.NEGATIVE_INFINITY,
  to: Number.isFinite(to) ? to : Number.POSITIVE_INFINITY,
});

/**
 * Where the base stands on the table. One that is longer than the table overhangs at both ends: then where
 * the table lies within the base. A base or table that is not known sets no bounds. An upright axis stands over the
 * middle of the table's depth, and its height is no place to choose.
 */
export function placesOnTable(of: Case, axis: 'x' | 'y'): Range {
  if (axis === 'y' && isUpright(of)) return { from: 0, to: 0 };
  const ends = baseEnds(of, axis);
  const low = evaluateTerm(ends.low, of).low;
  const high = evaluateTerm(ends.high, of).high;
  const half = (axis === 'x' ? of.machine.tableX : of.machine.tableY).low / 2;
  const [a, b] = [-half - low, half - high];
  return orAnywhere(Math.min(a, b), Math.max(a, b));
}

/**
 * Where every tip of the part is within travel, in every kind that it may be: surely, or where that is nowhere on the
 * table, perhaps; where no place is in reach of all kinds, for the first that has one.
 */
export function placesInReach(cases: readonly Case[], axis: 'x' | 'y', table: Range): Range {
  const reach = cases.map((of) => reachOf(of, axis));
  const isOnTable = (range: Range): boolean => !isEmpty(meet(range, table));
  const sure = reach.map((each) => each.sure).reduce(meet);
  if (isOnTable(sure)) return sure;
  const perhaps = reach.map((each) => each.perhaps);
  const all = perhaps.reduce(meet);
  return isOnTable(all) ? all : (perhaps.find(isOnTable) ?? all);
}

function reachOf(of: Case, axis: 'x' | 'y'): { readonly sure: Range; readonly perhaps: Range } {
  // its check judges the heights
  if (axis === 'y' && isUpright(of)) return { sure: { from: 0, to: 0 }, perhaps: { from: 0, to: 0 } };
  const right = evaluateSide(TIP_REACH[axis].high, of);
  const left = evaluateSide(TIP_REACH[axis].low, of);
  const travel: Interval = axis === 'x' ? of.machine.travelX : of.machine.travelY;
  return {
    sure: orAnywhere(left.high - travel.low / 2, travel.low / 2 - right.high),
    perhaps: orAnywhere(left.low - travel.high / 2, travel.high / 2 - right.low),
  };
}

export interface Served {
  readonly range: Range;
  /** indices of the wishes that it grants */
  readonly of: readonly number[];
}

/**
 * The range of places on the table that serves the most hours: a single place serves the families whose
 * ranges hold it, and the best place lies at the end of some range. Ties go to the middle of the table.
 */
export function bestRange(
  table: Range,
  wishes: readonly { readonly range: Range; readonly weight: number }[],
): Served {
  const within = wishes.map((wish) => meet(wish.range, table));
  const spots = [
    nearestTo(0, table),
    ...within.filter((range) => !isEmpty(range)).flatMap(({ from, to }) => [from, to]),
  ];
  let best: readonly number[] = [];
  let bestWeight = -1;
  let bestSpot = Number.POSITIVE_INFINITY;
  for (const spot of spots.filter(Number.isFinite)) {
    const served = within.flatMap((range, index) => (holds(range, spot) ? [index] : []));
    const weight = served.reduce((sum, index) => sum + (wishes[index]?.weight ?? 0), 0);
    if (weight > bestWeight || (weight === bestWeight && Math.abs(spot) < Math.abs(bestSpot)))
      [best, bestWeight, bestSpot] = [served, weight, spot];
  }
  const range = best.reduce<Range>((all, index) => meet(all, within[index] ?? all), table);
  return { range, of: best };
}

const holds = ({ from, to }: Range, spot: number): boolean => spot >= from - 1e-9 && spot <= to + 1e-9;

/** The place of the range nearest to a spot. */
export const nearestTo = (spot: number, { from, to }: Range): number =>
  from > to ? (from + to) / 2 : Math.min(Math.max(spot, from), to);
