import type { Interval } from '../../quantities/interval.ts';
import { corners } from '../facts/corners.ts';
import { gainToBreakEven } from './present-worth.ts';
import type { Worth } from './worth.ts';

/** Hours at either end, the same whatever the order of the families. */
export const hoursTogether = (hours: readonly Interval[]): Interval => {
  const sum = (end: 'low' | 'high'): number =>
    Number(hours.reduce((all, each) => all + each[end], 0).toPrecision(12));
  return { low: sum('low'), high: sum('high') };
};

/** (gain to break even + running) ÷ (hours saved − swap hours); Infinity where swaps eat all that is saved. */
export function rateToBreakEven({ change, terms }: Worth): Interval {
  const saved = hoursTogether(change.saved);
  return corners(
    [gainToBreakEven(terms), change.running, saved, change.swapHours],
    ([gain = 0, running = 0, hours = 0, swaps = 0]) =>
      hours > swaps ? (gain + running) / (hours - swaps) : Number.POSITIVE_INFINITY,
  );
}

/** (gain to break even + running) ÷ rate + swap hours: the hours that have to be saved a year. */
export const hoursToBreakEven = ({ change, terms }: Worth): Interval =>
  corners(
    [gainToBreakEven(terms), change.running, change.rate, change.swapHours],
    ([gain = 0, running = 0, rate = 0, swaps = 0]) =>
      rate > 0 ? (gain + running) / rate + swaps : Number.POSITIVE_INFINITY,
  );
