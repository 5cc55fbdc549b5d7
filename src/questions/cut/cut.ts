import type { CutSize } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';
import { UNKNOWN_CUT } from './detailed.ts';

type CutAnswer = CutSize | 'detailed' | 'unknown';

/** How hard the heaviest cut pushes: three sizes, or the cut itself. */
export const cut = aboutPart<CutAnswer>({
  id: 'cut',
  section: 'cut',
  title: 'Heaviest cut',
  path: 'parts.cut',
  ask: ({ part }) => `How heavy is the heaviest milling cut on ${part}?`,
  hint: 'It is cut with the rotary clamped. The sizes stand for a cutter of 20 mm, or your largest if that is smaller; they are taken as steady. If the cutter beats over gaps or rough skin, answer "detailed".',
  hintInch:
    'It is cut with the rotary clamped. The sizes stand for a cutter of 0.787 in, or your largest if that is smaller; they are taken as steady. If the cutter beats over gaps or rough skin, answer "detailed".',
  why: 'The brakes of the rotary have to hold against the cut, and the spindle has to drive it.',
  readBy: ['brake-rotary', 'brake-tilt', 'spindle-power', 'spindle-torque', 'spindle-speed'],
  field: {
    kind: 'choice',
    options: () => [
      {
        value: 'light',
        label: 'light',
        about: 'a quarter of the cutter diameter deep, a tenth wide: finishing',
      },
      {
        value: 'medium',
        label: 'medium',
        about: 'half the diameter deep, a quarter wide',
      },
      {
        value: 'heavy',
        label: 'heavy',
        about: 'half the diameter deep, half wide: roughing',
      },
      {
        value: 'detailed',
        label: 'detailed',
        about: 'I know the cut and give its numbers',
      },
    ],
  },
  unsure: { as: 'computed', words: 'light, medium and heavy are each considered' },
  applies: needsTilt,
  get: (part) => (typeof part.cut === 'string' ? part.cut : 'detailed'),
  set: (part, size) => {
    if (size !== 'detailed') return { ...part, cut: size };
    return typeof part.cut === 'string' ? { ...part, cut: UNKNOWN_CUT } : part;
  },
});
