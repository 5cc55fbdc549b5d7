import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { wantsVises } from './wants-vises.ts';

/** Height of a vise. */
export const viseHeight = aboutShop<Uncertain>({
  id: 'vise-height',
  section: 'work',
  title: 'Height of a vise',
  path: 'work.vise.height',
  ask: () => 'How high above the table do parts sit in a vise beside the rotary?',
  hint: 'From the table to the bed between the jaws. Example: 75 mm.',
  hintInch: 'From the table to the bed between the jaws. Example: 3 in.',
  why: 'What lifts the head of the machine for tall work takes reach away from low work, and the vise gives some of it back.',
  readBy: [],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e4 } },
  unsure: { as: 'range', range: NOT_SURE['work.vise.height'] },
  applies: wantsVises,
  get: (answers) => answers.work.vise.height,
  set: (answers, height) => ({
    ...answers,
    work: { ...answers.work, vise: { ...answers.work.vise, height } },
  }),
});
