import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

const USUAL = '750 mm (29.5 in), an assumption';

/** Height of the hands where the lift begins. */
export const handFrom = aboutShop<Uncertain>({
  id: 'hand-from',
  section: 'lifting',
  title: 'Where the lift begins',
  path: 'shop.lifting.hand.from',
  ask: () => 'How high above the floor are the hands where the lift begins?',
  hint: 'The height of the cart or bench that it comes from. Example: 750 mm.',
  hintInch: 'The height of the cart or bench that it comes from. Example: 30 in.',
  why: 'From the floor, or from high up, less can be lifted than from the height of the hips.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 1e5 } },
  unsure: { as: 'computed', words: USUAL },
  preset: { value: 'unknown', words: USUAL },
  applies: (answers) => hasMeans(answers, 'hand'),
  get: (answers) => meansBy(answers, 'hand').from,
  set: (answers, from) => withMeans(answers, 'hand', { from }),
});
