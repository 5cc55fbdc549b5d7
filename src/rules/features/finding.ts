import type { Interval } from '../../quantities/interval.ts';
import { derived, known, type Value } from '../judging/value.ts';
import type { FeatureFound, FeatureGround } from './rule.ts';

export const NOTHING = known(0, 'nothing');

/** Needed where a number lies above its line; else for another reason. */
export function above(
  number: Value,
  limit: Value,
  over: Pick<FeatureFound, 'need' | 'why'> & { readonly parts?: readonly string[] },
  under: Pick<FeatureFound, 'need' | 'why'> & { readonly hours?: Value | null },
): FeatureFound {
  const surely = number.low > limit.high + 1e-9;
  const perhaps = number.high > limit.low + 1e-9;
  return {
    need: perhaps ? over.need : under.need,
    sure: surely || !perhaps,
    why: perhaps ? over.why : under.why,
    number,
    limit,
    parts: perhaps ? (over.parts ?? []) : [],
    hours: under.hours ?? null,
  };
}

/** The most of several numbers; nothing where there are none. */
export function most(all: readonly Value[], path: string): Value {
  const end = (which: keyof Interval): number => Math.max(0, ...all.map((each) => each[which]));
  return derived({ low: end('low'), high: end('high') }, path, all);
}

/** Yearly hours of the covered families of which something is so: for sure at the least, perhaps at the most. */
export function hoursWhere(
  { covered }: FeatureGround,
  isSo: (family: FeatureGround['covered'][number]['family']) => 'yes' | 'perhaps' | 'no',
  path: string,
): { readonly value: Value; readonly parts: readonly string[] } {
  const told = covered.map(({ family }) => ({ family, so: isSo(family) })).filter(({ so }) => so !== 'no');
  const ends = {
    low: told.reduce((sum, { family, so }) => sum + (so === 'yes' ? family.hours.low : 0), 0),
    high: told.reduce((sum, { family }) => sum + family.hours.high, 0),
  };
  const from = told.flatMap(({ family, so }) => [
    family.hours,
    ...(so === 'perhaps' ? family.cases.flatMap((of) => of.kinds) : []),
  ]);
  return { value: derived(ends, path, from), parts: told.map(({ family }) => family.name) };
}

/** Minutes at each of so many setups, as hours a year. */
export function hoursSaved(setups: Value, minutes: number, path: string): Value {
  return derived({ low: (setups.low * minutes) / 60, high: (setups.high * minutes) / 60 }, path, [setups]);
}
