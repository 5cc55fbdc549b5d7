import type { Choice, HoldingKind } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';

/** What holds the part on the rotary. */
export const heldBy = aboutPart<Choice<HoldingKind>>({
  id: 'held-by',
  section: 'holding',
  title: 'Held by',
  path: 'parts.holding.by',
  ask: ({ part }) => `What holds ${part} on the rotary?`,
  why: 'What holds the part swings with it, is carried with it, and stands between part and table.',
  readBy: ['swing', 'collet', 'payload', 'tool-length'],
  field: {
    kind: 'choice',
    options: () => [
      {
        value: 'fixture',
        label: 'fixture',
        about: 'a plate or block made for the part',
      },
      {
        value: 'vise',
        label: 'vise',
        about: 'a vise that stands on the faceplate',
      },
      { value: 'chuck', label: 'chuck', about: 'jaws around it' },
      {
        value: 'collet',
        label: 'collet',
        about: 'a bar in a sleeve that closes on it',
      },
    ],
  },
  unsure: { as: 'each-kind' },
  applies: needsTilt,
  get: (part) => part.holding.by,
  set: (part, by) => ({ ...part, holding: { ...part.holding, by } }),
});
