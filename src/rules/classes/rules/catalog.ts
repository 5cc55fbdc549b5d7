import { derived, type Hanging, known } from '../../judging/value.ts';
import { exactly } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { defineGroup, EVERY_CLASS, type Weighed } from '../rule.ts';

const counted = ({ judged }: ClassGround): Weighed => ({
  value: known(judged.length, 'arrangements'),
  parts: [],
});

/** Arrangements of the class that pass; at most, those that may. */
export function passing(judged: ClassGround['judged']): Weighed {
  const surely = judged.filter(({ passes }) => passes === 'yes').length;
  const open = judged.filter(({ passes }) => passes === 'open');
  const from: readonly Hanging[] = open.flatMap(({ own, families }) =>
    [...own, ...families.flatMap(({ outcomes }) => outcomes)].flatMap(({ openOn }) => openOn),
  );
  return {
    value: derived({ low: surely, high: surely + open.length }, 'arrangements that pass', from),
    parts: [],
  };
}

const thatPass = ({ judged }: ClassGround): Weighed | null => (judged.length === 0 ? null : passing(judged));

/** The least price of any arrangement of the class; nothing to say where no budget is named. */
function leastPrice({ judged, shop }: ClassGround): Weighed | null {
  if (judged.length === 0 || !Number.isFinite(shop.budget.high)) return null;
  const prices = judged.map(({ priced }) => priced.total);
  const least = (end: 'low' | 'high'): number => Math.min(...prices.map((each) => each[end]));
  return { value: derived({ low: least('low'), high: least('high') }, 'least price', prices), parts: [] };
}

const PASSES = { parts: [{ tolerance: 0.5 }] } as const;

/** What this catalog has of the class. */
export const catalog = defineGroup([
  {
    id: 'price-over',
    about: EVERY_CLASS,
    side: 'rules out',
    unit: 'money',
    number: leastPrice,
    limit: ({ shop }) => shop.budget,
    when: 'above',
    source: 'the catalog’s prices',
    examples: [
      {
        what: 'machine, rotary and drives over the budget',
        of: 'single-support',
        given: { ...PASSES, money: { budget: 100000 } },
        speaks: 'yes',
        limit: 100000,
      },
      { what: 'within it', of: 'single-support', given: PASSES, speaks: 'no' },
    ],
  },
  {
    id: 'catalog-none',
    about: EVERY_CLASS,
    side: 'rules out',
    unit: '',
    number: counted,
    limit: exactly(1, 'one arrangement'),
    when: 'below',
    source: 'the catalog',
    examples: [
      { what: 'no trunnion in it', of: 'trunnion', given: {}, speaks: 'yes', number: 0, limit: 1 },
      { what: 'a single-support one', of: 'single-support', given: {}, speaks: 'no' },
    ],
  },
  {
    id: 'none-passes',
    about: EVERY_CLASS,
    side: 'against',
    weighty: true,
    unit: '',
    number: thatPass,
    limit: exactly(1, 'one arrangement'),
    when: 'below',
    unless: [
      'sides-tilt',
      'sides-must-tilt',
      'tilt-beyond',
      'swing-beyond',
      'mass-beyond',
      'strength-beyond',
      'price-over',
    ],
    source: 'every check of every arrangement',
    examples: [
      {
        what: 'a mill without drives for its axes',
        of: 'single-support',
        given: { ...PASSES, machines: [{ axisDrives: { fitted: 0, offered: 0 } }] },
        speaks: 'yes',
        number: 0,
        limit: 1,
      },
      { what: 'one that holds the work', of: 'single-support', given: PASSES, speaks: 'no' },
    ],
  },
  {
    id: 'some-pass',
    about: EVERY_CLASS,
    side: 'for',
    unit: '',
    number: thatPass,
    limit: exactly(1, 'one arrangement'),
    when: 'at least',
    source: 'every check of every arrangement',
    examples: [
      {
        what: 'one that holds the work',
        of: 'single-support',
        given: PASSES,
        speaks: 'yes',
        limit: 1,
      },
      {
        what: 'a table that turns far too small a circle',
        of: 'single-support',
        given: { rotaries: [{ swing: 20 }] },
        speaks: 'no',
      },
      {
        what: 'a tolerance that nobody knows',
        of: 'single-support',
        given: { parts: [{ tolerance: 'unknown' }] },
        speaks: 'open',
      },
    ],
  },
]);
