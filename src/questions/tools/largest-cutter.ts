import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Diameter of the largest cutter. */
export const largestCutter = aboutShop<Uncertain>({
  id: 'largest-cutter',
  section: 'tools',
  title: 'Largest cutter',
  path: 'tools.largestCutter',
  ask: () => 'What is the diameter of the largest cutter on these parts?',
  hint: 'Example: 20 mm.',
  hintInch: 'Example: 3/4 in.',
  why: 'A cutter runs over the edge by half its diameter, and the travels have to allow it.',
  readBy: ['travel-x', 'travel-y', 'spindle-torque'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 2000 } },
  unsure: { as: 'range', range: NOT_SURE['tools.largestCutter'] },
  get: (answers) => answers.tools.largestCutter,
  set: (answers, largestCutter) => ({
    ...answers,
    tools: { ...answers.tools, largestCutter },
  }),
});
