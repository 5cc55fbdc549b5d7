import { forkliftCapacity, loadCenter } from '../../../mechanics/lifting/forklift-capacity.ts';
import { isUsableSlingAngle } from '../../../mechanics/lifting/sling-leg-tension.ts';
import { fixed, shopInput } from '../../inputs/input.ts';
import { meansInput } from '../../inputs/means.ts';
import { rotary } from '../../inputs/rotary.ts';
import { setting } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { greatest } from '../../judging/side.ts';
import { falls, rises, type Term, term } from '../../judging/term.ts';
import { derived, openAnswer } from '../../judging/value.ts';
import { byHand } from './by-hand.ts';

/** The rotary with the plates that go on and off with it. */
export const liftedMass: Term = term(
  'rotary and plates',
  { rotary: rises(rotary.mass), plates: rises(setting.plateMass) },
  (of) => of.rotary + of.plates,
);

/** Less where the load sits farther out than the rating has it: half of the longer side of the base. */
const byForklift = (index: number): Term =>
  term(
    'forklift',
    {
      capacity: rises(meansInput(index, 'forklift', 'capacity', 'kg', [100, 10000])),
      center: rises(meansInput(index, 'forklift', 'loadCenter', 'mm', [200, 900])),
      along: falls(rotary.baseAlong),
      across: falls(rotary.baseAcross),
    },
    (of) =>
      forkliftCapacity({
        rated: of.capacity,
        ratedCenter: of.center,
        center: loadCenter(Math.max(of.along, of.across)),
      }),
  );

/** Its rating includes the rigging; legs that stand too flat lift nothing. */
const byHoist = (index: number): Term =>
  term(
    'hoist',
    {
      capacity: rises(meansInput(index, 'hoist', 'capacity', 'kg', [50, 10000])),
      rigging: falls(meansInput(index, 'hoist', 'rigging', 'kg', [0, 100])),
      legs: falls(meansInput(index, 'hoist', 'legs', '', [1, 4])),
      angle: rises(meansInput(index, 'hoist', 'slingAngle', '°', [10, 90])),
    },
    (of) => (of.legs < 2 || isUsableSlingAngle(of.angle) ? Math.max(0, of.capacity - of.rigging) : 0),
  );

/** What one of the shop's means lifts, kg of rotary and plates. */
export function capabilityOf(of: Case, index: number): Term {
  const means = of.shop.site.lifting?.[index];
  if (means === undefined) throw new Error(`there is no means of lifting ${index}`);
  if (means.by === 'hand') return byHand(index, means.coupling);
  return means.by === 'forklift' ? byForklift(index) : byHoist(index);
}

const NO_MEANS = term('no means', { none: rises(fixed('no means', 0)) }, (of) => of.none);

const notKnown = shopInput('what the means lift', 'kg', [0, 1000], () =>
  derived({ low: 0, high: Number.POSITIVE_INFINITY }, 'shop.lifting', openAnswer('shop.lifting')),
);
const NOT_KNOWN = term('means that are not known', { it: rises(notKnown) }, (of) => of.it);

/** The most that any of the shop's means lifts, kg. */
export const bestCapability = greatest(['rotary'], (of) => {
  const { lifting } = of.shop.site;
  return lifting === null ? [NOT_KNOWN] : [NO_MEANS, ...lifting.map((_, index) => capabilityOf(of, index))];
});

/** Lifts of the rotary a year; where there is none it can stay on. */
export const staysOn = {
  measure: 'stays-on',
  all: [
    {
      need: greatest(['swaps'], () => [
        term('lifts a year', { swaps: rises(setting.swaps) }, (of) => of.swaps),
      ]),
      have: greatest([], () => [term('none', { none: rises(fixed('none', 0)) }, (of) => of.none)]),
      sense: 'at-most',
    },
  ],
} as const;
