import type { Choice, Stands } from '../answers.ts';
import { aboutPart } from '../declare.ts';

/** Whether a round part stands on its end or lies on its side. */
export const stands = aboutPart<Choice<Stands>>({
  id: 'stands',
  section: 'parts',
  title: 'How it stands',
  path: 'parts.stands',
  ask: ({ part }) => `How does ${part} sit on the rotary?`,
  hint: 'The rotary is the table that turns the part, and mostly tilts it too, under the tool.',
  why: 'A part that lies across the rotary swings on its length, one that stands on its end on its diameter.',
  readBy: ['swing', 'tilt-swing', 'reach-high'],
  field: {
    kind: 'choice',
    options: () => [
      {
        value: 'upright',
        label: 'upright',
        about: 'on its end, its axis is the axis of the rotary',
      },
      {
        value: 'lying',
        label: 'lying',
        about: 'on its side, across the rotary',
      },
    ],
  },
  unsure: { as: 'each-kind' },
  applies: (part) => part.shape !== 'block',
  get: (part) => part.stands,
  set: (part, stands) => ({ ...part, stands }),
});
