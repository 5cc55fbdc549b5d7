import type { Choice, Shape } from '../answers.ts';
import { aboutPart } from '../declare.ts';

/** Block or round: what it is cut from, roughly. */
export const shape = aboutPart<Choice<Shape>>({
  id: 'shape',
  section: 'parts',
  title: 'Shape',
  path: 'parts.shape',
  ask: ({ part }) => `Which shape does ${part} start from?`,
  hint: 'Think of the stock or the casting, as it is put on the table.',
  why: 'A block swings on its diagonal, a round part on its diameter: that is how large the rotary has to be.',
  readBy: ['swing', 'faceplate', 'tilt-swing'],
  field: {
    kind: 'choice',
    options: () => [
      {
        value: 'block',
        label: 'block',
        about: 'a box with length, width and height',
      },
      { value: 'round', label: 'round', about: 'a bar, a disc, a ring' },
    ],
  },
  unsure: { as: 'each-kind' },
  get: (part) => part.shape,
  // a block is described as it stands
  set: (part, shape) => ({ ...part, shape, stands: shape === 'block' ? 'upright' : part.stands }),
});
