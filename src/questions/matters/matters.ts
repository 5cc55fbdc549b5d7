import { MEASURES, type Measure } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import type { Option } from '../question.ts';

const OPTIONS: readonly Option<Measure>[] = [
  {
    value: 'coverage',
    label: 'coverage',
    about: 'it takes on most of the hours of work',
  },
  {
    value: 'viseStations',
    label: 'vises',
    about: 'it leaves room for vises beside it',
  },
  {
    value: 'payback',
    label: 'payback',
    about: 'it has paid for itself soonest',
  },
  { value: 'price', label: 'price', about: 'it costs least' },
  { value: 'floorArea', label: 'floor', about: 'it takes least floor' },
  {
    value: 'swapHours',
    label: 'swaps',
    about: 'least time goes into lifting the rotary on and off',
  },
  {
    value: 'margin',
    label: 'margin',
    about: 'it keeps furthest from its limits',
  },
];
const STANDARD = 'coverage, vises, payback, price, floor, swaps, margin';

/** The order in which arrangements are compared. */
export const matters = aboutShop<readonly string[] | 'unknown'>({
  id: 'matters',
  section: 'matters',
  title: 'What matters most',
  path: 'matters',
  ask: () => 'What matters most to you? Name one or more, the most important first.',
  hint: 'The ones that you leave out follow in the usual order. Example: price, coverage.',
  why: 'Arrangements that all pass are compared on the first; those about level go on to the next.',
  readBy: [...MEASURES],
  field: { kind: 'order', options: () => OPTIONS },
  unsure: { as: 'value', value: MEASURES, words: STANDARD },
  preset: { value: MEASURES, words: STANDARD },
  get: (answers) => answers.matters,
  set: (answers, order) => ({
    ...answers,
    matters: order === 'unknown' ? MEASURES : order.filter(isMeasure),
  }),
});

const isMeasure = (word: string): word is Measure => MEASURES.some((measure) => measure === word);
