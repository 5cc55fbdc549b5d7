import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';

const FROM_SIZE = 'worked out from size and material, as if it were solid';

/** How heavy the blank is; without an answer it follows from size and material. */
export const mass = aboutPart<Uncertain>({
  id: 'mass',
  section: 'parts',
  title: 'Mass',
  path: 'parts.mass',
  ask: ({ part }) => `How heavy is ${part} before it is cut?`,
  hint: 'Without an answer it is worked out as a solid block or bar. Example: 0.8 kg.',
  hintInch: 'Without an answer it is worked out as a solid block or bar. Example: 1.8 lb.',
  why: 'Tables have a limit for what they carry, and a lower one when they are tilted.',
  readBy: ['payload', 'tilt-moment', 'brake-rotary', 'brake-tilt', 'inertia', 'table-load'],
  field: { kind: 'quantity', of: 'mass', limits: { above: 0, most: 20000 } },
  unsure: { as: 'computed', words: FROM_SIZE },
  preset: { value: 'unknown', words: FROM_SIZE },
  get: (part) => part.mass,
  set: (part, mass) => ({ ...part, mass }),
});
