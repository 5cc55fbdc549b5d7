import { EXAMPLE_HANDS, EXAMPLE_HOIST } from '../../checks/example-means.ts';
import { derived, known, type Value } from '../../judging/value.ts';
import { exactly } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { lightestLift } from '../lightest-lift.ts';
import { ADDED, COMMON_PRACTICE, defineGroup, type Weighed } from '../rule.ts';

/** The mass of the rotary of the class that is lifted most easily. */
function lightest(of: ClassGround): Weighed | null {
  const lift = lightestLift(of);
  return lift === null ? null : { value: lift.mass, parts: [] };
}

const NO_LIFT = known(0, 'lifting capacity');
const able = (of: ClassGround): Value => lightestLift(of)?.able ?? NO_LIFT;

/** How often a year the shop would lift a rotary on or off. */
function swaps({ shop: { switchesPerWeek: weekly, assume } }: ClassGround): Weighed {
  const ends = { low: weekly.low * assume.weeks, high: weekly.high * assume.weeks };
  return {
    value: derived(ends, 'swaps a year', [weekly, known(assume.weeks, 'assume.weeks')]),
    parts: [],
  };
}

const hoist = (capacity: number) => ({ shop: { lifting: [{ ...EXAMPLE_HOIST, capacity }] } });

const BEST_MEANS = 'the best means of lifting, as the check of the lift reckons it';

/** Whether such a rotary can be lifted off, so that the table is free. */
export const lifting = defineGroup([
  {
    id: 'lifts-off',
    about: ADDED,
    side: 'for',
    unit: 'kg',
    number: lightest,
    limit: able,
    when: 'at most',
    source: BEST_MEANS,
    examples: [
      {
        what: '95 kg, a hoist for 105 kg with 10 kg of rigging',
        of: 'single-support',
        given: hoist(105),
        speaks: 'yes',
        number: 95,
        limit: 95,
      },
      { what: 'a hoist for 104 kg', of: 'single-support', given: hoist(104), speaks: 'no' },
      {
        what: 'two people lift 17.73 kg from a table, and no rotary is as light',
        of: 'single-support',
        given: { shop: { lifting: [EXAMPLE_HANDS] } },
        speaks: 'no',
      },
      {
        what: 'nobody knows what can lift',
        of: 'single-support',
        given: { shop: { lifting: 'unknown' } },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'stays-on',
    about: ADDED,
    side: 'against',
    unit: 'kg',
    number: lightest,
    limit: able,
    when: 'above',
    source: BEST_MEANS,
    examples: [
      {
        what: '95 kg, a hoist for 104 kg with 10 kg of rigging',
        of: 'single-support',
        given: hoist(104),
        speaks: 'yes',
        number: 95,
        limit: 94,
      },
      { what: 'a hoist for 105 kg', of: 'single-support', given: hoist(105), speaks: 'no' },
    ],
  },
  {
    id: 'never-lifted',
    about: ['built-in'],
    side: 'for',
    unit: '',
    number: swaps,
    limit: exactly(1, 'one swap'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'three switches a week',
        of: 'built-in',
        given: { work: { switchesPerWeek: 3 } },
        speaks: 'yes',
        number: 144,
        limit: 1,
      },
      { what: 'none', of: 'built-in', given: { work: { switchesPerWeek: 0 } }, speaks: 'no' },
    ],
  },
]);
