import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Cutting speed of that cut. */
export const cuttingSpeed = aboutPart<Uncertain>({
  id: 'cutting-speed',
  section: 'cut',
  title: 'Cutting speed',
  path: 'parts.cut.vc',
  ask: ({ part, units }) =>
    `What is the cutting speed of the heaviest cut on ${part}, in ${units === 'inch' ? 'feet' : 'meters'} a minute?`,
  hint: 'How fast the edge moves through the material. Example: 150 m/min.',
  hintInch: 'How fast the edge moves through the material. Example: 500 ft/min.',
  why: 'With the cutter diameter it gives the spindle speed, and with the force the power.',
  readBy: ['spindle-power', 'spindle-torque', 'spindle-speed'],
  field: {
    kind: 'quantity',
    of: 'cuttingSpeed',
    limits: { least: 1, most: 5000 },
  },
  unsure: { as: 'range', range: NOT_SURE['parts.cut.vc'] },
  applies: isDetailed,
  get: (part) => detailOf(part).vc,
  set: (part, vc) => ({ ...part, cut: { ...detailOf(part), vc } }),
});
