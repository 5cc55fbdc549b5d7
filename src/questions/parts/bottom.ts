import { aboutPart } from '../declare.ts';

/** Whether the face that it stands on is cut too. */
export const bottom = aboutPart<boolean | 'unknown'>({
  id: 'bottom',
  section: 'parts',
  title: 'Bottom',
  path: 'parts.bottom',
  ask: ({ part }) => `Is the face that ${part} stands on cut too?`,
  why: 'No rotary reaches the face that the part is held on: it takes one more setup, with its minutes.',
  readBy: ['payback'],
  field: { kind: 'yes-no' },
  unsure: { as: 'each-kind' },
  get: (part) => part.bottom,
  set: (part, bottom) => ({ ...part, bottom }),
});
