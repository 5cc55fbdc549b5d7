import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Share of the hours that is three-axis work. */
export const threeAxisShare = aboutShop<Uncertain>({
  id: 'three-axis-share',
  section: 'work',
  title: 'Three-axis work',
  path: 'work.threeAxisShare',
  ask: () => "How much of the machine's time will go into work that needs no rotary?",
  hint: 'Plain work in vises, as you do it today. Example: 40 %.',
  why: 'A machine that does both has to have room for both; one that does little of it can do without.',
  readBy: ['viseStations', 'swapHours', 'payback'],
  field: { kind: 'quantity', of: 'share', limits: { least: 0, most: 1 } },
  unsure: { as: 'range', range: NOT_SURE['work.threeAxisShare'] },
  get: (answers) => answers.work.threeAxisShare,
  set: (answers, threeAxisShare) => ({ ...answers, work: { ...answers.work, threeAxisShare } }),
});
