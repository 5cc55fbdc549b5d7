import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

const USUAL = '400 mm (15.7 in), an assumption';

/** From the body to the hands. */
export const handReach = aboutShop<Uncertain>({
  id: 'hand-reach',
  section: 'lifting',
  title: 'Reach of the arms',
  path: 'shop.lifting.hand.reach',
  ask: () => 'How far in front of the body are the hands while they lift?',
  hint: 'Level, from the ankles to the hands, with the edge of the machine between. Example: 400 mm.',
  hintInch: 'Level, from the ankles to the hands, with the edge of the machine between. Example: 16 in.',
  why: 'The further out a load is held, the less of it a back can bear.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 1e5 } },
  unsure: { as: 'computed', words: USUAL },
  preset: { value: 'unknown', words: USUAL },
  applies: (answers) => hasMeans(answers, 'hand'),
  get: (answers) => meansBy(answers, 'hand').reach,
  set: (answers, reach) => withMeans(answers, 'hand', { reach }),
});
