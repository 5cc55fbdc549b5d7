import { hull, type Interval } from '../../quantities/interval.ts';
import { fromCents, toCents } from './cents.ts';

/** What is saved and lost in a year, hours; and what an hour costs. */
export interface YearlyChange {
  /** hours saved, family by family */
  readonly saved: readonly Interval[];
  /** hours lost to swaps of the rotary */
  readonly swapHours: Interval;
  readonly rate: Interval;
  readonly running: Interval;
}

/**
 * Gain of a year, to the cent: every family's hours at the rate, less swaps at the same rate, less what it
 * costs to run. The rate is one number wherever it stands, so both of its ends are taken one after the other.
 * Example: 81 h saved at 70, 12 h of swaps, 2500 to run → 81 × 70 − 12 × 70 − 2500 = 2330.
 */
export function gainOf({ saved, swapHours, rate, running }: YearlyChange): Interval {
  const at = (each: number): Interval => {
    const savings = (end: 'low' | 'high'): number =>
      saved.reduce((cents, hours) => cents + toCents(hours[end] * each), 0);
    return {
      low: fromCents(savings('low') - toCents(swapHours.high * each) - toCents(running.high)),
      high: fromCents(savings('high') - toCents(swapHours.low * each) - toCents(running.low)),
    };
  };
  return hull([at(rate.low), at(rate.high)]);
}
