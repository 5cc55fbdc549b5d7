import { aboutShop } from '../declare.ts';

/** The mill that stands in the shop already. */
export const ownMill = aboutShop<string>({
  id: 'own-mill',
  section: 'start',
  title: 'Your own mill',
  path: 'shop.machine',
  ask: () => 'Do you own a mill that the rotary table should go on?',
  hint: 'Pick "none" to look at every machine of the catalog. Your own mill has to be in the catalog to be picked.',
  why: 'A mill that you own costs nothing more, but the rotary has to fit its table, its travel and its spindle.',
  readBy: ['table-footprint', 'travel-x', 'travel-y', 'reach-high', 'reach-low', 'price'],
  field: {
    kind: 'choice',
    options: (offer) => [
      {
        value: 'none',
        label: 'none',
        about: 'consider every machine of the catalog',
      },
      ...offer.machines.map(({ id, name, kind }) => ({
        value: id,
        label: name,
        about: KINDS[kind] ?? kind,
      })),
    ],
  },
  unsure: {
    as: 'value',
    value: 'none',
    words: 'none, so every machine of the catalog is considered',
  },
  get: (answers) => answers.shop.machine,
  set: (answers, machine) => ({
    ...answers,
    shop: { ...answers.shop, machine },
  }),
});

const KINDS: Readonly<Record<string, string>> = {
  mill: 'three-axis mill',
  convertible: 'mill with a rotary table that comes off again',
  'five-axis': 'five-axis machine, its table is built in',
};
