import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';
import { UNKNOWN_DRILL } from './drilled.ts';

/** Whether a large hole is drilled off the axis that has to hold it. */
export const drill = aboutPart<boolean | 'unknown'>({
  id: 'drill',
  section: 'drill',
  title: 'Large drilled hole',
  path: 'parts.drill',
  ask: ({ part }) => `Is a large hole drilled into ${part}, away from its middle?`,
  hint: 'From about 8 mm on, in a tilted position: the drill presses the table over.',
  hintInch: 'From about 5/16 in on, in a tilted position: the drill presses the table over.',
  why: 'The push of a drill at its distance from the tilt axis is more than many milling cuts.',
  readBy: ['brake-tilt'],
  field: { kind: 'yes-no' },
  unsure: {
    as: 'value',
    value: 'unknown',
    words: 'a hole from too small to matter to 40 mm',
  },
  preset: { value: false, words: 'no' },
  applies: needsTilt,
  get: (part) => part.drill !== null,
  set: (part, drilled) => ({
    ...part,
    drill: drilled === false ? null : (part.drill ?? UNKNOWN_DRILL),
  }),
});
