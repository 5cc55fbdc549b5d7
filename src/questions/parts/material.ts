import type { MaterialId } from '../../mechanics/forces/materials.ts';
import type { Choice } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import type { Option } from '../question.ts';

const MATERIALS: readonly Option<MaterialId>[] = [
  {
    value: 'steel-carbon',
    label: 'carbon steel',
    about: 'plain structural and machining steels',
  },
  {
    value: 'steel-alloy',
    label: 'alloy steel',
    about: 'stronger, with chromium, nickel or molybdenum',
  },
  {
    value: 'steel-hardened',
    label: 'hardened steel',
    about: 'hardened before it is milled',
  },
  {
    value: 'stainless-austenitic',
    label: 'stainless steel',
    about: 'the common kind that a magnet does not hold',
  },
  { value: 'iron-gray', label: 'gray iron', about: 'ordinary cast iron' },
  {
    value: 'iron-ductile',
    label: 'ductile iron',
    about: 'cast iron that bends before it breaks',
  },
  {
    value: 'aluminum-wrought',
    label: 'wrought aluminum',
    about: 'plate, bar, extrusion',
  },
  { value: 'aluminum-cast', label: 'cast aluminum', about: '' },
  { value: 'titanium', label: 'titanium', about: 'its fine chips burn' },
  {
    value: 'nickel-alloy',
    label: 'nickel alloy',
    about: 'for heat and corrosion',
  },
  { value: 'brass', label: 'brass', about: 'and bronze that cuts like it' },
  { value: 'plastic', label: 'plastic', about: '' },
];

/** What it is made of. */
export const material = aboutPart<Choice<MaterialId>>({
  id: 'material',
  section: 'parts',
  title: 'Material',
  path: 'parts.material',
  ask: ({ part }) => `What is ${part} made of?`,
  hint: 'Pick the one nearest to yours.',
  why: 'It sets how hard the tool pushes against the brakes of the rotary, and how heavy the part is.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque', 'payload'],
  field: { kind: 'choice', options: () => MATERIALS },
  unsure: { as: 'each-kind' },
  get: (part) => part.material,
  set: (part, material) => ({ ...part, material }),
});
