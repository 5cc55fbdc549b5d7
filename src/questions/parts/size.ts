import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

const NOTHING_KNOWN = ['unknown', 'unknown', 'unknown'] as const;

/** Length, width and height of a block as it stands. */
export const size = aboutPart<readonly Uncertain[] | 'unknown'>({
  id: 'size',
  section: 'parts',
  title: 'Size',
  path: 'parts.size',
  ask: ({ part }) => `How large is ${part}? Length x width x height, as it stands on the table.`,
  hint: 'Example: 90 x 60 x 55 mm. A number that you do not know can be "not sure", and "50 to 60" is fine too.',
  hintInch:
    'Example: 3 1/2 x 2 1/2 x 2 in. A number that you do not know can be "not sure", and "50 to 60" is fine too.',
  why: 'Everything follows from the size: how large the rotary, how far the travels, how high the spindle.',
  readBy: [
    'swing',
    'faceplate',
    'tilt-swing',
    'travel-x',
    'travel-y',
    'reach-high',
    'index-clear',
    'payload',
  ],
  field: {
    kind: 'quantities',
    of: 'length',
    limits: { above: 0, most: 5000 },
    names: ['length', 'width', 'height'],
  },
  unsure: { as: 'range', range: NOT_SURE['parts.size'] },
  applies: (part) => part.shape !== 'round',
  get: (part) => part.size,
  set: (part, typed) => {
    const [length, width, height] = typed === 'unknown' ? NOTHING_KNOWN : typed;
    return {
      ...part,
      size: [length ?? 'unknown', width ?? 'unknown', height ?? 'unknown'],
    };
  },
});
