import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { drillOf, isDrilled } from './drilled.ts';

/** Diameter of the largest drill. */
export const drillDiameter = aboutPart<Uncertain>({
  id: 'drill-diameter',
  section: 'drill',
  title: 'Drill diameter',
  path: 'parts.drill.diameter',
  ask: ({ part }) => `What is the diameter of the largest drill used on ${part}?`,
  hint: 'Example: 12 mm.',
  hintInch: 'Example: 1/2 in.',
  why: 'The push of a drill grows with its diameter.',
  readBy: ['brake-tilt'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 200 } },
  unsure: { as: 'range', range: NOT_SURE['parts.drill.diameter'] },
  applies: isDrilled,
  get: (part) => drillOf(part).diameter,
  set: (part, diameter) => ({ ...part, drill: { ...drillOf(part), diameter } }),
});
