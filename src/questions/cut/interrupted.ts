import { aboutPart } from '../declare.ts';
import { detailOf, isDetailed } from './detailed.ts';

/** Whether the cutter runs in and out of the material. */
export const interrupted = aboutPart<boolean | 'unknown'>({
  id: 'interrupted',
  section: 'cut',
  title: 'Interrupted cut',
  path: 'parts.cut.interrupted',
  ask: ({ part }) => `Does the heaviest cut on ${part} run over holes, slots or gaps?`,
  hint: 'An interrupted cut hits the material again and again.',
  why: 'Hits are harder than a steady push, so the brakes are held against more.',
  readBy: ['brake-rotary', 'brake-tilt'],
  field: { kind: 'yes-no' },
  unsure: {
    as: 'value',
    value: true,
    words: 'yes, which asks more of the brakes',
  },
  applies: isDetailed,
  get: (part) => detailOf(part).interrupted,
  set: (part, interrupted) => ({
    ...part,
    cut: { ...detailOf(part), interrupted: interrupted !== false },
  }),
});
