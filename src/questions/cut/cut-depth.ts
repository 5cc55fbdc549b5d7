import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Depth of cut along the axis of the tool. */
export const cutDepth = aboutPart<Uncertain>({
  id: 'cut-depth',
  section: 'cut',
  title: 'Depth of cut',
  path: 'parts.cut.ap',
  ask: ({ part }) => `How deep is the heaviest cut on ${part}, along the tool?`,
  hint: 'Also called axial depth of cut or ap. Example: 8 mm.',
  hintInch: 'Also called axial depth of cut or ap. Example: 5/16 in.',
  why: 'The force grows with the depth of cut.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 500 } },
  unsure: { as: 'range', range: NOT_SURE['parts.cut.ap'] },
  applies: isDetailed,
  get: (part) => detailOf(part).ap,
  set: (part, ap) => ({ ...part, cut: { ...detailOf(part), ap } }),
});
