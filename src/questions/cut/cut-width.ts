import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { surelyLess } from '../surely-less.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Width of cut across the tool. */
export const cutWidth = aboutPart<Uncertain>({
  id: 'cut-width',
  section: 'cut',
  title: 'Width of cut',
  path: 'parts.cut.ae',
  ask: ({ part }) => `How wide is the heaviest cut on ${part}, across the tool?`,
  hint: 'Also called radial width of cut or ae; no wider than the cutter. Example: 4 mm.',
  hintInch: 'Also called radial width of cut or ae; no wider than the cutter. Example: 5/32 in.',
  why: 'It sets how thick the chips get and how many teeth cut at a time.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 500 } },
  unsure: { as: 'range', range: NOT_SURE['parts.cut.ae'] },
  applies: isDetailed,
  objection: (part, width) =>
    surelyLess(detailOf(part).diameter, width)
      ? 'A cut is no wider than its cutter, whose diameter you gave before.'
      : null,
  get: (part) => detailOf(part).ae,
  set: (part, ae) => ({ ...part, cut: { ...detailOf(part), ae } }),
});
