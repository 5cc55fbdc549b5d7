import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Changes between the two kinds of work. */
export const switchesPerWeek = aboutShop<Uncertain>({
  id: 'switches-per-week',
  section: 'work',
  title: 'Changes a week',
  path: 'work.switchesPerWeek',
  ask: () =>
    'How often in a week would you change between work on the rotary and work that needs the whole table?',
  hint: 'Taking the rotary off is one change, putting it on again is another. Never is 0. Example: 3.',
  why: 'Where vises find no room beside the rotary, each change is a lift and costs time.',
  readBy: ['swapHours', 'payback', 'lift'],
  field: { kind: 'quantity', of: 'count', limits: { least: 0, most: 1000 } },
  unsure: { as: 'range', range: NOT_SURE['work.switchesPerWeek'] },
  get: (answers) => answers.work.switchesPerWeek,
  set: (answers, switchesPerWeek) => ({ ...answers, work: { ...answers.work, switchesPerWeek } }),
});
