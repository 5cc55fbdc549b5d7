import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Floor that is free for the machine. */
export const bay = aboutShop<readonly Uncertain[] | 'unknown'>({
  id: 'bay',
  section: 'building',
  title: 'Room for the machine',
  path: 'shop.bay',
  ask: () => 'How much floor is there for the machine? Length x width, with the room to get around it.',
  hint: 'The room between walls, posts and what else has to stay. Example: 4200 x 3600 mm.',
  hintInch: 'The room between walls, posts and what else has to stay. Example: 14 x 12 ft.',
  why: 'A machine takes more floor than it stands on: its doors open, and somebody has to get at every side of it.',
  readBy: ['bay'],
  field: {
    kind: 'quantities',
    of: 'length',
    limits: { above: 0, most: 1e6 },
    names: ['length of the bay', 'width of the bay'],
  },
  unsure: { as: 'range', range: NOT_SURE['shop.bay'] },
  get: (answers) => answers.shop.bay,
  set: (answers, typed) => {
    const [length, width] = typed === 'unknown' ? (['unknown', 'unknown'] as const) : typed;
    return { ...answers, shop: { ...answers.shop, bay: [length ?? 'unknown', width ?? 'unknown'] } };
  },
});
