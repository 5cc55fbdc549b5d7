import type { Choice, Swap } from '../answers.ts';
import { aboutShop } from '../declare.ts';

/** How the rotary is put back in place. */
export const swap = aboutShop<Choice<Swap>>({
  id: 'swap',
  section: 'work',
  title: 'How it goes back on',
  path: 'work.swap',
  ask: () => 'How does the rotary come back to its place on the table?',
  hint: 'It has to sit there as true as before. Keys are usual; who has nothing yet answers "not sure".',
  why: 'It decides how long the machine stands at each change.',
  readBy: ['swapHours', 'payback'],
  field: {
    kind: 'choice',
    options: () => [
      {
        value: 'zero-point',
        label: 'zero-point',
        about: 'it drops onto clamping bolts that hold it true at once',
      },
      { value: 'keyed', label: 'keyed', about: 'keys in the slots of the table line it up' },
      { value: 'trammed', label: 'trammed', about: 'it is lined up by hand with an indicator' },
    ],
  },
  unsure: { as: 'each-kind' },
  applies: (answers) => answers.work.switchesPerWeek !== 0,
  get: (answers) => answers.work.swap,
  set: (answers, swap) => ({ ...answers, work: { ...answers.work, swap } }),
});
