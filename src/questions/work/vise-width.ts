import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { wantsVises } from './wants-vises.ts';

const USUAL = '152 mm (6 in), an assumption';

/** Width of a vise. */
export const viseWidth = aboutShop<Uncertain>({
  id: 'vise-width',
  section: 'work',
  title: 'Width of a vise',
  path: 'work.vise.width',
  ask: () => 'How wide is a vise that stays beside the rotary?',
  hint: 'Over all, across the jaws. Example: 152 mm.',
  hintInch: 'Over all, across the jaws. Example: 6 in.',
  why: 'Vises stand beside the rotary as many as find room there.',
  readBy: ['viseStations'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e4 } },
  unsure: { as: 'computed', words: USUAL },
  preset: { value: 'unknown', words: USUAL },
  applies: wantsVises,
  get: (answers) => answers.work.vise.width,
  set: (answers, width) => ({ ...answers, work: { ...answers.work, vise: { ...answers.work.vise, width } } }),
});
