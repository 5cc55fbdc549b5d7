import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Diameter of the cutter in the heaviest cut. */
export const cutterDiameter = aboutPart<Uncertain>({
  id: 'cutter-diameter',
  section: 'cut',
  title: 'Cutter diameter',
  path: 'parts.cut.diameter',
  ask: ({ part }) => `What is the diameter of the cutter in the heaviest cut on ${part}?`,
  hint: 'Example: 16 mm.',
  hintInch: 'Example: 5/8 in.',
  why: 'With the cutting speed it gives the spindle speed, with the width of cut the teeth that cut at a time.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque', 'spindle-speed'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 500 } },
  unsure: { as: 'range', range: NOT_SURE['parts.cut.diameter'] },
  applies: isDetailed,
  get: (part) => detailOf(part).diameter,
  set: (part, diameter) => ({ ...part, cut: { ...detailOf(part), diameter } }),
});
