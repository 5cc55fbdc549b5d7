import { aboutShop } from '../declare.ts';

/** Millimeters or inches. The answers are kept in mm either way, so it changes no answer. */
export const units = aboutShop<string>({
  id: 'units',
  section: 'start',
  title: 'Units',
  path: 'units',
  ask: () => 'Do you measure in millimeters or in inches?',
  hint: 'Only for what you type without a unit: "3 1/2 in" and "88.9 mm" are understood everywhere.',
  why: 'It changes how numbers are read and shown, and no result.',
  readBy: [],
  field: {
    kind: 'choice',
    options: () => [
      { value: 'mm', label: 'millimeters', about: 'mm, kg' },
      { value: 'inch', label: 'inches', about: 'in, lb' },
    ],
  },
  unsure: { as: 'value', value: 'mm', words: 'millimeters' },
  preset: { value: 'mm', words: 'millimeters' },
  get: () => 'mm',
  set: (answers) => answers,
});
