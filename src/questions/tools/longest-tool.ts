import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { surelyLess } from '../surely-less.ts';

/** Gauge length of the longest tool. */
export const longestTool = aboutShop<Uncertain>({
  id: 'longest-tool',
  section: 'tools',
  title: 'Longest tool',
  path: 'tools.longest',
  ask: () => 'How far does the longest tool that these parts need stick out of the spindle?',
  hint: 'From the spindle nose to the tip. Example: 180 mm.',
  hintInch: 'From the spindle nose to the tip. Example: 7 in.',
  why: 'With the longest tool in, the spindle has to get up and away before the table tilts.',
  readBy: ['reach-high', 'index-clear', 'reach-low', 'tool-length'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 2000 } },
  unsure: { as: 'range', range: NOT_SURE['tools.longest'] },
  objection: (answers, longest) =>
    surelyLess(longest, answers.tools.shortest)
      ? 'The longest tool is no shorter than the shortest one, which you gave before.'
      : null,
  get: (answers) => answers.tools.longest,
  set: (answers, longest) => ({
    ...answers,
    tools: { ...answers.tools, longest },
  }),
});
