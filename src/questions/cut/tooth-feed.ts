import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Feed per tooth of that cut. */
export const toothFeed = aboutPart<Uncertain>({
  id: 'tooth-feed',
  section: 'cut',
  title: 'Feed per tooth',
  path: 'parts.cut.fz',
  ask: ({ part }) => `What is the feed per tooth of the heaviest cut on ${part}?`,
  hint: 'How far the work moves from one tooth to the next. Example: 0.1 mm.',
  hintInch: 'How far the work moves from one tooth to the next. Example: 0.004 in.',
  why: 'Thicker chips push harder.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque'],
  field: {
    kind: 'quantity',
    of: 'feedPerTooth',
    limits: { above: 0, most: 5 },
  },
  unsure: { as: 'range', range: NOT_SURE['parts.cut.fz'] },
  applies: isDetailed,
  get: (part) => detailOf(part).fz,
  set: (part, fz) => ({ ...part, cut: { ...detailOf(part), fz } }),
});
