import type { Choice, Loading } from '../answers.ts';
import { aboutShop } from '../declare.ts';

/** How the parts get onto the rotary. */
export const loading = aboutShop<Choice<Loading>>({
  id: 'loading',
  section: 'work',
  title: 'Loading',
  path: 'work.loading',
  ask: () => 'How are the parts put on the rotary?',
  why: 'Put on by hand a part never sits where the program expects it, and the control has to allow for that.',
  readBy: ['rotating-work-offset', 'tilted-work-plane', 'features'],
  field: {
    kind: 'choice',
    options: () => [
      { value: 'by-hand', label: 'by hand', about: 'one after the other' },
      {
        value: 'pallet',
        label: 'pallet',
        about: 'set up outside, then put on as a whole',
      },
      { value: 'robot', label: 'robot', about: 'without anybody there' },
    ],
  },
  unsure: { as: 'each-kind' },
  get: (answers) => answers.work.loading,
  set: (answers, loading) => ({
    ...answers,
    work: { ...answers.work, loading },
  }),
});
