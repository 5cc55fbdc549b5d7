import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** People who lift together. */
export const liftingPeople = aboutShop<Uncertain>({
  id: 'lifting-people',
  section: 'lifting',
  title: 'People who lift',
  path: 'shop.lifting.hand.people',
  ask: () => 'How many people would lift a rotary together by hand?',
  hint: 'Only those who are there each time and fit for it; rules on lifting at work come first. Example: 2.',
  why: 'What backs can bear is little, and two people do not bear twice as much as one.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'count', limits: { least: 1, most: 10, whole: true } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hand.people'] },
  applies: (answers) => hasMeans(answers, 'hand'),
  get: (answers) => meansBy(answers, 'hand').people,
  set: (answers, people) => withMeans(answers, 'hand', { people }),
});
