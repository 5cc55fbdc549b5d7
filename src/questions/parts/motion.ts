import type { Choice, Motion } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from './needs-tilt.ts';

/** Whether the rotary stands still while the tool cuts. */
export const motion = aboutPart<Choice<Motion>>({
  id: 'motion',
  section: 'parts',
  title: 'Motion',
  path: 'parts.motion',
  ask: ({ part }) => `Does the rotary move while ${part} is cut?`,
  hint: 'Work with holes, pockets and faces on several sides is positional: so it is where nobody ever asked for more.',
  why: 'Standing still, the brakes take the cutting force; moving, the drives have to, and the control must follow the tool tip.',
  readBy: ['drive-rotary', 'drive-tilt', 'rotary-speed', 'tool-center-point', 'look-ahead', 'index-clear'],
  field: {
    kind: 'choice',
    options: () => [
      {
        value: 'positional',
        label: 'positional',
        about: 'it turns, is clamped, then the tool cuts ("3+2")',
      },
      {
        value: 'simultaneous',
        label: 'simultaneous',
        about: 'all five axes move together, as for a turbine blade',
      },
      {
        value: 'surfaces',
        label: 'surfaces',
        about: 'curved surfaces milled with the tilt standing still',
      },
    ],
  },
  unsure: { as: 'each-kind' },
  applies: needsTilt,
  get: (part) => part.motion,
  set: (part, motion) => ({ ...part, motion }),
});
