import type { Interval } from '../../quantities/interval.ts';
import type { Case, MachineCase } from '../judging/case.ts';
import { idOf } from '../judging/memo.ts';
import { derived, known, type Value } from '../judging/value.ts';
import { additionSets } from './additions.ts';
import type { Candidate } from './candidates.ts';
import { THICKEST } from './risers.ts';
import { BARE, heightenedBy, plateMass, raisedBy } from './setting.ts';

type Stack = Pick<Case, 'raised' | 'heightened' | 'plateThickness' | 'plateMass'>;

/** What the additions of a machine may come to, from none to all that there is. */
export function anyAdditions(machine: MachineCase): Pick<Stack, 'raised' | 'heightened'> {
  const sets = additionSets({ machine }).map((additions) => ({ ...BARE, additions }));
  return {
    raised: ranging(spanOf(sets.map(raisedBy)), 'clearance.raised'),
    heightened: ranging(spanOf(sets.map(heightenedBy)), 'clearance.height'),
  };
}

/** How thick plates under a rotary may be, from none to the thickest. */
export const anyThickness = ({ assume }: Case['shop']): Value =>
  ranging({ low: 0, high: thickest(assume) }, 'plates.thickness');

/** What such plates may weigh. */
export function anyPlateMass(of: Pick<Candidate, 'rotary'>, { assume }: Case['shop']): Value {
  const most = plateMass(of, thickest(assume));
  return derived({ low: 0, high: most.high }, 'plates.mass', [most]);
}

/** The same ground with any additions and plates at once. What fails on it fails with each of them. */
export function anyStack(ground: Case): Case {
  const { keys, memo, machine, rotary, shop } = ground;
  return {
    ...ground,
    keys: { ...keys, additions: idOf(memo, 'additions', ANY), plates: idOf(memo, 'plates', ANY) },
    withParts: new Map(),
    ...anyAdditions(machine),
    plateThickness: anyThickness(shop),
    plateMass: anyPlateMass({ rotary }, shop),
  };
}

const ANY = 'any';

const thickest = ({ plateThickness }: Case['shop']['assume']): number => Math.max(THICKEST, plateThickness);

const spanOf = (all: readonly number[]): Interval => ({ low: Math.min(...all), high: Math.max(...all) });

const ranging = (range: Interval, path: string): Value =>
  range.low === range.high ? known(range.low, path) : derived(range, path, []);
