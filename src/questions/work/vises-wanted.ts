import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** How many vises should find room beside the rotary. */
export const visesWanted = aboutShop<Uncertain>({
  id: 'vises-wanted',
  section: 'work',
  title: 'Vises beside it',
  path: 'work.visesWanted',
  ask: () => 'How many vises should stay on the table beside the rotary?',
  hint: 'For three-axis work between times. None is 0.',
  why: 'A rotary that leaves room for vises can stay on the machine; otherwise it is lifted off and on.',
  readBy: ['viseStations', 'swapHours'],
  field: {
    kind: 'quantity',
    of: 'count',
    limits: { least: 0, most: 20, whole: true },
  },
  unsure: { as: 'range', range: NOT_SURE['work.visesWanted'] },
  get: (answers) => answers.work.visesWanted,
  set: (answers, visesWanted) => ({
    ...answers,
    work: { ...answers.work, visesWanted },
  }),
});
