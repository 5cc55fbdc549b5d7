import type { Answers } from './answers.ts';
import type { Question } from './question.ts';

/** What the parts are, and what comes into the building at all: asked first, without any reckoning. */
const ALWAYS: ReadonlySet<string> = new Set([
  ...['units', 'own-mill'],
  ...['name', 'shape', 'size', 'diameter', 'length', 'approaches', 'slant', 'undercut'],
]);

/** A machine that is bought has to come in, and a tape tells whether it can; a mill that is owned stands there. */
const OF_A_NEW_MACHINE: ReadonlySet<string> = new Set(['doorway-width', 'doorway-height', 'ceiling']);

/**
 * Whether a question is asked of everybody, in the order of the interview; every other one only while it can change the
 * result. Example: the size of a part is, the rating of the floor is not.
 */
export function isBasicFact({ id }: Question, answers: Answers): boolean {
  if (ALWAYS.has(id)) return true;
  // of one part alone nobody need say that it must be held
  if (id === 'must') return answers.parts.length > 1;
  return OF_A_NEW_MACHINE.has(id) && !millStays(answers);
}

/** Whether the mill is owned already and stays where it is, so that nothing has to come in for it. */
const millStays = ({ shop: { machine } }: Answers): boolean => machine !== 'none' && machine !== 'unknown';
