import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

const USUAL = '250 mm (9.84 in), an assumption';

/** Height of the lift. */
export const handLift = aboutShop<Uncertain>({
  id: 'hand-lift',
  section: 'lifting',
  title: 'Height of the lift',
  path: 'shop.lifting.hand.lift',
  ask: () => 'How far up do the hands lift a rotary, from where the lift begins?',
  hint: 'To the height of the machine table, or over its edge. Example: 250 mm.',
  hintInch: 'To the height of the machine table, or over its edge. Example: 10 in.',
  why: 'The further it is lifted, the less of it a back can bear.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 1e5 } },
  unsure: { as: 'computed', words: USUAL },
  preset: { value: 'unknown', words: USUAL },
  applies: (answers) => hasMeans(answers, 'hand'),
  get: (answers) => meansBy(answers, 'hand').lift,
  set: (answers, lift) => withMeans(answers, 'hand', { lift }),
});
