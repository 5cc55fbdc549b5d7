import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Number of teeth of that cutter. */
export const cutterTeeth = aboutPart<Uncertain>({
  id: 'cutter-teeth',
  section: 'cut',
  title: 'Teeth',
  path: 'parts.cut.teeth',
  ask: ({ part }) => `How many teeth has the cutter in the heaviest cut on ${part}?`,
  hint: 'Example: 4.',
  why: 'More teeth in the cut push harder.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque'],
  field: {
    kind: 'quantity',
    of: 'count',
    limits: { least: 1, most: 100, whole: true },
  },
  unsure: { as: 'range', range: NOT_SURE['parts.cut.teeth'] },
  applies: isDetailed,
  get: (part) => detailOf(part).teeth,
  set: (part, teeth) => ({ ...part, cut: { ...detailOf(part), teeth } }),
});
