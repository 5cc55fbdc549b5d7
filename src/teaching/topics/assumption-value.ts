import {
  ASSUMED_COUPLING,
  ASSUMPTION_GROUPS,
  ASSUMPTIONS,
  type Assumption,
  type AssumptionOverrides,
} from '../../questions/assumptions.ts';
import { ASSUMPTION_LESSONS, type AssumptionKey } from '../words/assumptions.ts';

/** Every assumption, in the order of the file; those of a group behind them. */
export const ASSUMPTION_KEYS = Object.keys(ASSUMPTION_LESSONS) as readonly AssumptionKey[];

/** Value, unit, meaning and range of an assumption; the one that is a word has neither unit nor range. */
export function assumptionAt(key: AssumptionKey): Assumption | null {
  const [name = '', inGroup] = key.split('.');
  const groups: Readonly<Record<string, Readonly<Record<string, Assumption>>>> = ASSUMPTION_GROUPS;
  const plain: Readonly<Record<string, Assumption>> = ASSUMPTIONS;
  return (inGroup === undefined ? plain[name] : groups[name]?.[inGroup]) ?? null;
}

/** What an assumption means. */
export const meaningOf = (key: AssumptionKey): string => assumptionAt(key)?.means ?? ASSUMED_COUPLING.means;

/** The answers file with this assumption changed. */
export function overridden(key: AssumptionKey, value: number): AssumptionOverrides {
  const [name = '', inGroup] = key.split('.');
  return (
    inGroup === undefined ? { [name]: value } : { [name]: { [inGroup]: value } }
  ) as AssumptionOverrides;
}

/** Other values to try, in the order in which they are tried: twice, half, half as much again, all within the range. */
export function othersOf({ value, range: [low, high] }: Assumption): readonly number[] {
  const tried = value === 0 ? [high / 10, high / 2] : [value * 2, value / 2, value * 1.5];
  return tried.filter((each) => each !== value && each >= low && each <= high);
}
