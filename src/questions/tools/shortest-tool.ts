import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Gauge length of the shortest tool. */
export const shortestTool = aboutShop<Uncertain>({
  id: 'shortest-tool',
  section: 'tools',
  title: 'Shortest tool',
  path: 'tools.shortest',
  ask: () => 'How far does your shortest tool stick out of the spindle?',
  hint: 'From the spindle nose to the tip, holder and all: the gauge length. Example: 90 mm.',
  hintInch: 'From the spindle nose to the tip, holder and all: the gauge length. Example: 3 1/2 in.',
  why: 'With the shortest tool in, the spindle has to come down far enough to reach low work.',
  readBy: ['reach-low'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 2000 } },
  unsure: { as: 'range', range: NOT_SURE['tools.shortest'] },
  get: (answers) => answers.tools.shortest,
  set: (answers, shortest) => ({
    ...answers,
    tools: { ...answers.tools, shortest },
  }),
});
