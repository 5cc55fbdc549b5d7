import type { Choice, Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';

/** One phase or three. */
export const phases = aboutShop<Choice<'one' | 'three'>>({
  id: 'phases',
  section: 'supply',
  title: 'Electric supply',
  path: 'shop.power.phases',
  ask: () => 'What electric supply is there for the machine?',
  hint: 'It stands on the plate of the supply or in the fuse box; otherwise take the word of an electrician.',
  why: 'Most machines of this kind want three phases; where there is one, a converter has to be bought and paid.',
  readBy: ['power'],
  field: {
    kind: 'choice',
    options: () => [
      { value: 'three', label: 'three phases', about: 'as in workshops: heavy plugs with four or five pins' },
      {
        value: 'one',
        label: 'one phase',
        about: 'as in homes: ordinary sockets, or one for a stove or a dryer',
      },
    ],
  },
  unsure: { as: 'each-kind' },
  get: (answers) => kindOf(answers.shop.power.phases),
  set: (answers, kind) => ({
    ...answers,
    shop: { ...answers.shop, power: { ...answers.shop.power, phases: PHASES[kind] } },
  }),
});

const PHASES = { one: 1, three: 3, unknown: 'unknown' } as const;

function kindOf(phases: Uncertain): Choice<'one' | 'three'> {
  if (phases === 1) return 'one';
  return phases === 3 ? 'three' : 'unknown';
}
