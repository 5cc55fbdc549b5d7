import { ROUTES } from '../../../decision-classes.ts';
import { derived, known, type Value } from '../../../judging/value.ts';
import type { Judged } from '../../../weighing/judged.ts';
import { exactly, nearlyAllOfThem } from '../../capacity.ts';
import type { Weighed } from '../../rule.ts';
import { passing } from '../../rules/catalog.ts';
import type { RouteGround } from '../ground.ts';
import type { RouteRule } from '../index.ts';

const thatPass = ({ judged }: RouteGround): Weighed | null => (judged.length === 0 ? null : passing(judged));

const sure = (all: readonly Judged[]): readonly Judged[] => all.filter(({ passes }) => passes === 'yes');

/** The most that one of the route covers; nothing to say where none surely passes. */
function mostCovered({ judged }: RouteGround): Weighed | null {
  const all = sure(judged).map(({ coverage }) => coverage);
  if (all.length === 0) return null;
  const most = (end: 'low' | 'high'): number => Math.max(...all.map((each) => each[end]));
  const from = judged[0]?.families.map(({ family }) => family.hours) ?? [];
  return { value: derived({ low: most('low'), high: most('high') }, 'coverage', from), parts: [] };
}

function cheapest(all: readonly Judged[]): Value | null {
  const prices = all.map(({ priced }) => priced.total);
  if (prices.length === 0) return null;
  const least = (end: 'low' | 'high'): number => Math.min(...prices.map((each) => each[end]));
  return derived({ low: least('low'), high: least('high') }, 'price', prices);
}

const priceOfRoute = ({ judged }: RouteGround): Weighed | null => {
  const value = cheapest(sure(judged));
  return value === null ? null : { value, parts: [] };
};

const priceOfAny = ({ judged, shop }: RouteGround): Weighed | null => {
  const value = cheapest(judged);
  return value === null || !Number.isFinite(shop.budget.high) ? null : { value, parts: [] };
};

/** The cheapest that passes on any route, with the band within which prices count as level. */
function level({ all, shop }: RouteGround): Value {
  const value = cheapest(sure(all)) ?? known(0, 'price');
  const times = 1 + shop.assume.band;
  return derived({ low: value.low * times, high: value.high * times }, 'level price', [value]);
}

const PASSES = { parts: [{ tolerance: 0.5 }] } as const;
const TWO_MILLS = {
  ...PASSES,
  machines: [{ id: 'owned-mill' }, { id: 'other-mill', price: 50000 }],
  shop: { machine: 'owned-mill' },
} as const;
const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const WITH_LARGE = (share: number) => ({
  parts: [
    { name: 'Hinge', tolerance: 0.5, ...hours(100 - share) },
    { name: 'Plate', tolerance: 0.5, holding: { diameter: 900 }, ...hours(share) },
  ],
});
const CHECKED = 'every check of every arrangement';

/** How the route comes out: whether anything passes, what it covers, what it costs. */
export const outcomeOfRoute: readonly RouteRule[] = [
  {
    id: 'route-price-over',
    about: ROUTES,
    side: 'rules out',
    unit: 'money',
    number: priceOfAny,
    limit: ({ shop }) => shop.budget,
    when: 'above',
    source: 'the catalog’s prices',
    examples: [
      {
        what: 'over the budget',
        of: 'new-mill',
        given: { money: { budget: 90000 } },
        speaks: 'yes',
        limit: 90000,
      },
      { what: 'within it', of: 'new-mill', given: PASSES, speaks: 'no' },
    ],
  },
  {
    id: 'route-none-passes',
    about: ROUTES,
    side: 'against',
    weighty: true,
    unit: '',
    number: thatPass,
    limit: exactly(1, 'one arrangement'),
    when: 'below',
    unless: ['one-axis-not-enough', 'one-axis-must-tilt', 'route-price-over'],
    source: CHECKED,
    examples: [
      {
        what: 'a rotary that turns far too little',
        of: 'new-mill',
        given: { rotaries: [{ swing: 20 }] },
        speaks: 'yes',
        number: 0,
        limit: 1,
      },
      { what: 'one that holds the work', of: 'new-mill', given: PASSES, speaks: 'no' },
    ],
  },
  {
    id: 'route-some-pass',
    about: ROUTES,
    side: 'for',
    unit: '',
    number: thatPass,
    limit: exactly(1, 'one arrangement'),
    when: 'at least',
    source: CHECKED,
    examples: [
      { what: 'one that holds the work', of: 'new-mill', given: PASSES, speaks: 'yes', limit: 1 },
      {
        what: 'a rotary that turns far too little',
        of: 'new-mill',
        given: { rotaries: [{ swing: 20 }] },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'route-covers-part',
    about: ROUTES,
    side: 'against',
    weighty: true,
    unit: 'share',
    number: mostCovered,
    limit: nearlyAllOfThem,
    when: 'below',
    source: CHECKED,
    examples: [
      {
        what: 'a tenth of the hours is too large for it',
        of: 'new-mill',
        given: WITH_LARGE(10),
        speaks: 'yes',
        number: 0.9,
        limit: 0.95,
      },
      { what: 'three hundredths are', of: 'new-mill', given: WITH_LARGE(3), speaks: 'no' },
    ],
  },
  {
    id: 'route-covers',
    about: ROUTES,
    side: 'for',
    unit: 'share',
    number: mostCovered,
    limit: nearlyAllOfThem,
    when: 'at least',
    source: CHECKED,
    examples: [
      {
        what: 'three hundredths of the hours are too large',
        of: 'new-mill',
        given: WITH_LARGE(3),
        speaks: 'yes',
        number: 0.97,
        limit: 0.95,
      },
      { what: 'a tenth is', of: 'new-mill', given: WITH_LARGE(10), speaks: 'no' },
    ],
  },
  {
    id: 'route-dearer',
    about: ROUTES,
    side: 'against',
    unit: 'money',
    number: priceOfRoute,
    limit: level,
    when: 'above',
    source: 'the catalog’s prices',
    examples: [
      { what: 'a mill to buy, where one is owned', of: 'new-mill', given: TWO_MILLS, speaks: 'yes' },
      { what: 'the mill that is owned', of: 'own-mill', given: TWO_MILLS, speaks: 'no' },
    ],
  },
  {
    id: 'route-cheapest',
    about: ROUTES,
    side: 'for',
    unit: 'money',
    number: priceOfRoute,
    limit: level,
    when: 'at most',
    source: 'the catalog’s prices',
    examples: [
      { what: 'the mill that is owned', of: 'own-mill', given: TWO_MILLS, speaks: 'yes' },
      { what: 'a mill to buy, where one is owned', of: 'new-mill', given: TWO_MILLS, speaks: 'no' },
    ],
  },
];
