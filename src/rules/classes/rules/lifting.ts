import { derived, known } from '../../judging/value.ts';
import { askedAtLeast, exactly } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { liftable } from '../liftable.ts';
import { ADDED, COMMON_PRACTICE, defineGroup, type Weighed } from '../rule.ts';
import { SWING } from './swing.ts';

const enough = askedAtLeast(SWING);

/** The lightest rotary of the class that turns what has to be turned at least. */
function lightest(of: ClassGround): Weighed | null {
  const need = enough(of)?.value;
  if (need === undefined) return null;
  const surely = of.tables.filter(({ swing }) => swing.low >= need.high - 1e-9);
  const perhaps = of.tables.filter(({ swing }) => swing.high >= need.low - 1e-9);
  if (perhaps.length === 0) return null;
  const least = (tables: typeof perhaps, end: 'low' | 'high'): number =>
    Math.min(...tables.map(({ mass }) => mass[end]));
  const ends = {
    low: least(perhaps, 'low'),
    high: surely.length === 0 ? Number.POSITIVE_INFINITY : least(surely, 'high'),
  };
  return {
    value: derived(ends, 'mass of the rotary', [need, ...perhaps.map(({ mass }) => mass)]),
    parts: [],
  };
}

/** How often a year the shop would lift a rotary on or off. */
function swaps({ shop: { switchesPerWeek: weekly, assume } }: ClassGround): Weighed {
  const ends = { low: weekly.low * assume.weeks, high: weekly.high * assume.weeks };
  return {
    value: derived(ends, 'swaps a year', [weekly, known(assume.weeks, 'assume.weeks')]),
    parts: [],
  };
}

const hoist = (capacity: number) =>
  ({
    shop: {
      lifting: [
        {
          by: 'hoist',
          capacity,
          hookHeight: 2600,
          legs: 2,
          slingAngle: 60,
          slingHeight: 500,
          rigging: 10,
          loadCenter: 'unknown',
          people: 'unknown',
          reach: 'unknown',
          from: 'unknown',
          lift: 'unknown',
        },
      ],
    },
  }) as const;

const RATING = 'the hoist’s rating less its rigging, or the forklift’s';

/** Whether such a rotary can be lifted off, so that the table is free. */
export const lifting = defineGroup([
  {
    id: 'lifts-off',
    about: ADDED,
    side: 'for',
    unit: 'kg',
    number: lightest,
    limit: ({ answers }) => liftable(answers),
    when: 'at most',
    source: RATING,
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
    limit: ({ answers }) => liftable(answers),
    when: 'above',
    source: RATING,
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
