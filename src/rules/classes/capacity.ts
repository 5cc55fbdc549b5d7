import type { Interval } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import type { RotaryCase } from '../judging/case.ts';
import { atMost } from '../judging/compare.ts';
import { derived, known, type Value } from '../judging/value.ts';
import type { ClassGround } from './ground.ts';
import { neededFor } from './hours-share.ts';
import type { ClassRule, Weighed } from './rule.ts';

/** Nearly all of the hours: what is left adds less than the share that sets a size. */
export const nearlyAll = ({ shop: { assume } }: Pick<ClassGround, 'shop'>): number =>
  Math.max(assume.leastCoverage, 1 - assume.kneeShare);

/** Something that a family asks for and a rotary offers. */
export interface Capacity {
  readonly name: string;
  readonly quantity: (of: ClassGround) => (family: Family) => Value;
  readonly offers: (table: RotaryCase) => Value;
}

/** The most that any rotary of the class offers. */
export const mostOffered =
  ({ name, offers }: Pick<Capacity, 'name' | 'offers'>) =>
  (of: ClassGround): Value => {
    const all = of.tables.map(offers);
    const most = (end: keyof Interval): number => Math.max(0, ...all.map((each) => each[end]));
    return derived({ low: most('low'), high: most('high') }, `${name} offered`, all);
  };

/** What a share of the hours asks for, with the families that ask for more than any of the class offers. */
const asked = (capacity: Capacity, share: (of: ClassGround) => number) => {
  const most = mostOffered(capacity);
  return (of: ClassGround): Weighed | null => {
    if (of.families.length === 0 || of.tables.length === 0) return null;
    const quantity = capacity.quantity(of);
    const limit = most(of);
    return {
      value: neededFor(of.families, quantity, share(of)),
      parts: of.families
        .filter((family) => !atMost(quantity(family).high, limit.low))
        .map(({ name }) => name),
    };
  };
};

/** What the least coverage and the must-have parts ask for: without it nothing of the class can pass. */
export const askedAtLeast = (capacity: Capacity): ClassRule['number'] =>
  asked(capacity, (of) => of.shop.assume.leastCoverage);

/** What nearly all of the hours ask for. */
export const askedByNearlyAll = (capacity: Capacity): ClassRule['number'] => asked(capacity, nearlyAll);

/** The widest value over the kinds that a family may be. */
export function acrossCases(
  family: Family,
  read: (of: Family['cases'][number]) => Value,
  path: string,
): Value {
  const all = family.cases.map(read);
  if (all.length === 0) return known(0, path);
  const ends = {
    low: Math.min(...all.map(({ low }) => low)),
    high: Math.max(...all.map(({ high }) => high)),
  };
  return derived(ends, path, [...all, ...family.cases.flatMap((of) => of.kinds)]);
}

/** The assumptions that are lines of these tables. */
type Line = 'leastCoverage' | 'kneeShare' | 'oversize' | 'spreadWide' | 'threeAxisOften';

/** An assumption as a line. */
export const assumed =
  (name: Line) =>
  ({ shop }: Pick<ClassGround, 'shop'>): Value =>
    known(shop.assume[name], `assume.${name}`);

export const exactly = (value: number, path: string) => (): Value => known(value, path);

/** The least coverage, or where nearly all of the hours begin. */
export const nearlyAllOfThem = (of: Pick<ClassGround, 'shop'>): Value =>
  known(nearlyAll(of), 'nearly all of the hours');
