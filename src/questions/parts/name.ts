import { aboutPart } from '../declare.ts';

/** What the part is called: everything that is said about it later uses the name. */
export const name = aboutPart<string>({
  id: 'name',
  section: 'parts',
  title: 'Name',
  path: 'parts.name',
  ask: () => 'What do you call this part?',
  hint: 'One name can stand for a family of parts of about the same size that are made the same way. Example: Lock gate hinge.',
  why: 'The result speaks of each part by its name.',
  readBy: [],
  field: { kind: 'text', longest: 60 },
  unsure: { as: 'computed', words: 'a name such as "Part 1"' },
  get: (part) => part.name,
  set: (part, typed) => (typed === 'unknown' ? part : { ...part, name: typed.trim() }),
});
