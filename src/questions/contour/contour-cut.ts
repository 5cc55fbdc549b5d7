import type { Choice, CutSize } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { mayMove } from './moving.ts';

/** The cut that is taken while the rotary moves. */
export const contourCut = aboutPart<Choice<CutSize>>({
  id: 'contour-cut',
  section: 'contour',
  title: 'Cut while moving',
  path: 'parts.contourCut',
  ask: ({ part }) => `How heavy is the cut on ${part} while the rotary moves?`,
  hint: 'Then its drives hold against the cut, not its brakes. Mostly it is the last, light cut.',
  why: 'While the rotary moves its drives hold against the cut, and they are weaker than its brakes.',
  readBy: ['drive-rotary', 'drive-tilt'],
  field: {
    kind: 'choice',
    options: () => [
      { value: 'light', label: 'light', about: 'finishing' },
      { value: 'medium', label: 'medium', about: '' },
      { value: 'heavy', label: 'heavy', about: 'roughing' },
    ],
  },
  unsure: { as: 'computed', words: 'light, medium and heavy are each considered' },
  applies: mayMove,
  get: (part) => (typeof part.contourCut === 'string' ? part.contourCut : 'unknown'),
  set: (part, contourCut) => ({ ...part, contourCut }),
});
