import type { Interval } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import { derived, type Hanging, type Value } from '../judging/value.ts';
import { share } from '../weighing/coverage.ts';
import type { Weighed } from './rule.ts';

/** Whether something is so of a family, for every kind that it may be, for some, or for none. */
export type Whether = 'yes' | 'perhaps' | 'no';

/** What is said of each of several kinds, said of all of them together. */
export const whether = (kinds: readonly boolean[]): Whether =>
  kinds.every(Boolean) ? 'yes' : kinds.some(Boolean) ? 'perhaps' : 'no';

/**
 * Share of the five-axis hours whose families are so, and these families. `about`: the families that are
 * named, those that are so or those that are not.
 */
export function shareOf(
  families: readonly Family[],
  isSo: (family: Family) => Whether,
  about: 'so' | 'not so' = 'so',
): Weighed {
  const told = families.map((family) => ({ family, so: isSo(family) }));
  const hours = (end: 'low' | 'high', wanted: (so: Whether) => boolean): number =>
    told.reduce((sum, { family, so }) => sum + (wanted(so) ? family.hours[end] : 0), 0);
  const surely = (so: Whether): boolean => so === 'yes';
  const perhaps = (so: Whether): boolean => so !== 'no';
  const ends: Interval = {
    low: share(
      hours('low', surely),
      hours('high', (so) => !surely(so)),
    ),
    high: share(
      hours('high', perhaps),
      hours('low', (so) => !perhaps(so)),
    ),
  };
  const kinds: readonly Hanging[] = told.flatMap(({ family, so }) =>
    so === 'perhaps' ? family.cases.flatMap((of) => of.kinds) : [],
  );
  return {
    value: derived(ends, 'share of the five-axis hours', [...families.map(({ hours: of }) => of), ...kinds]),
    parts: told
      .filter(({ so }) => (about === 'so' ? so !== 'no' : so !== 'yes'))
      .map((each) => each.family.name),
  };
}

/**
 * The least value that is enough for a share of the five-axis hours, and for every family that must be held.
 * Example: swings 90, 150 and 390 mm with 60, 37 and 3 % of the hours; a share of 0.95 needs 150 mm.
 */
export function neededFor(
  families: readonly Family[],
  quantity: (family: Family) => Value,
  wanted: number,
): Value {
  const sized = families.map((family) => ({ family, size: quantity(family) }));
  const least = (end: 'low' | 'high'): number => {
    const [inside, outside] = end === 'low' ? (['high', 'low'] as const) : (['low', 'high'] as const);
    const sizes = [...new Set(sized.map(({ size }) => size[end]))].sort((a, b) => a - b);
    const holds = (limit: number): boolean => {
      let [held, rest] = [0, 0];
      for (const { family, size } of sized) {
        if (size[end] <= limit) held += family.hours[inside];
        else if (family.must) return false;
        else rest += family.hours[outside];
      }
      return share(held, rest) >= wanted - 1e-9;
    };
    return sizes.find(holds) ?? sizes.at(-1) ?? 0;
  };
  const from = sized.flatMap(({ family, size }) => [family.hours, size]);
  return derived({ low: least('low'), high: least('high') }, 'needed', from);
}
