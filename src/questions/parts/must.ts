import { aboutPart } from '../declare.ts';
import { needsTilt } from './needs-tilt.ts';

/** Whether a choice that cannot hold this part is no choice. */
export const must = aboutPart<boolean | 'unknown'>({
  id: 'must',
  section: 'parts',
  title: 'Must be held',
  path: 'parts.must',
  ask: ({ part }) => `Must whatever you buy be able to make ${part}?`,
  hint: 'Answer no if it may go on being made as it is today.',
  why: 'One large part that must be held sets the size of everything.',
  readBy: ['envelope', 'coverage'],
  field: { kind: 'yes-no' },
  unsure: { as: 'value', value: false, words: 'no' },
  preset: { value: false, words: 'no' },
  applies: needsTilt,
  get: (part) => part.must,
  set: (part, must) => ({ ...part, must: must === true }),
});
