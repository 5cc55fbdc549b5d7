import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { wantsVises } from './wants-vises.ts';

const USUAL = '450 mm (17.7 in), an assumption';

/** Length of a vise. */
export const viseLength = aboutShop<Uncertain>({
  id: 'vise-length',
  section: 'work',
  title: 'Length of a vise',
  path: 'work.vise.length',
  ask: () => 'How long is a vise that stays beside the rotary?',
  hint: 'Over all, from the handle end of the bed to the other. Example: 450 mm.',
  hintInch: 'Over all, from the handle end of the bed to the other. Example: 17 3/4 in.',
  why: 'A vise stands across the table, and its bed must not stand far over the edge.',
  readBy: ['viseStations'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e4 } },
  unsure: { as: 'computed', words: USUAL },
  preset: { value: 'unknown', words: USUAL },
  applies: wantsVises,
  get: (answers) => answers.work.vise.length,
  set: (answers, length) => ({
    ...answers,
    work: { ...answers.work, vise: { ...answers.work.vise, length } },
  }),
});
