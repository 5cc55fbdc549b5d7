import { inGroup } from './rule-lesson.ts';

const THREE_AXIS = {
  number: 'share of the work that stays on three axes',
  limit: 'share from which on three-axis work is frequent',
  plain:
    'The machine goes on doing three-axis work. A small rotary leaves room for vises beside it, or comes off. A heavy table, or one that is built in, stays where it is, and vises stand on it.',
  mistake: 'To think of the new work only. The old work pays the machine meanwhile.',
} as const;

const VISES = {
  number: 'vises that find room beside it on the best arrangement',
  limit: 'vises that are wanted',
  plain:
    'What is left of the table on each side of the rotary, less a gap, is room for vises. Their jaws have to lie within the travel too.',
  mistake: 'To measure the table and subtract the base. Work that swings out takes more than the base does.',
} as const;

const LIFTED = {
  number: 'mass of the lightest rotary of this kind',
  limit: 'most that a means of lifting in the shop takes',
  plain:
    'What can be lifted off leaves a whole table behind. What cannot stays on, and three-axis work lives beside it.',
  mistake: 'To forget who lifts it. Twice a week by riggers is no plan.',
} as const;

const PASSING = {
  number: 'arrangements of this kind that pass',
  limit: 'one arrangement',
  plain:
    'A kind may suit on paper while nothing in the catalog does. Every arrangement goes through every check, and those that pass are counted.',
  mistake: 'To choose the kind and only then look what there is.',
} as const;

/** The rules about the shop, the table and the catalog. */
export const SHOP_RULES = {
  'three-axis-often-light': inGroup(
    THREE_AXIS,
    'Three-axis work is frequent, and it leaves room',
    'It speaks for kinds that leave room or come off.',
  ),
  'three-axis-often-heavy': inGroup(
    THREE_AXIS,
    'Three-axis work is frequent, and it is in the way',
    'It speaks against kinds that stay on.',
  ),
  'three-axis-seldom': inGroup(THREE_AXIS, 'Three-axis work is seldom', 'It speaks for kinds that stay on.'),
  'vises-fit': inGroup(VISES, 'Enough vises find room beside it', 'It speaks for a kind.'),
  'vises-missing': inGroup(VISES, 'Too few vises find room beside it', 'It speaks against a kind.'),
  'lifts-off': inGroup(LIFTED, 'It can be lifted off', 'It speaks for a kind.'),
  'stays-on': inGroup(LIFTED, 'It stays on', 'It speaks against a kind.'),
  'never-lifted': inGroup(
    { ...LIFTED, number: 'swaps a year that a rotary would ask for', limit: 'one swap' },
    'It is never lifted off',
    'It speaks for tables that are built in.',
  ),
  'price-over': inGroup(
    { ...PASSING, number: 'price of the cheapest arrangement of this kind', limit: 'budget' },
    'The cheapest is over the budget',
    'It rules a kind out.',
  ),
  'catalog-none': inGroup(
    { ...PASSING, number: 'arrangements of this kind in the catalog' },
    'The catalog has none',
    'It rules a kind out.',
  ),
  'none-passes': inGroup(PASSING, 'None of its arrangements passes', 'It speaks against a kind.'),
  'some-pass': inGroup(PASSING, 'Some of its arrangements pass', 'It speaks for a kind.'),
} as const;
