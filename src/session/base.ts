import type { Answers } from '../questions/answers.ts';
import { blankAnswers, blankPart } from '../questions/blank-answers.ts';
import { readAnswers } from '../questions/read-answers.ts';
import type { Base, Kept } from './kept.ts';

const read = new Map<string, Answers | null>();
const MOST_READ = 4;

/** What the text of an answers file says; null where it is none. Read once. */
function answersIn(text: string): Answers | null {
  const found = read.get(text);
  if (found !== undefined) return found;
  const reading = readAnswers('the answers file of the interview', text);
  const answers = reading.ok ? reading.value.answers : null;
  if (read.size >= MOST_READ) read.clear();
  read.set(text, answers);
  return answers;
}

/** Whether a base can be gone on from. */
export const isUsable = ({ text, parts }: Base): boolean => {
  const answers = answersIn(text);
  return answers !== null && parts.every((part) => part === null || part in answers.parts);
};

/** What stands before any answer is laid on it: what the answers file says, or nothing. One part for each name. */
export function groundAnswers({ base }: Kept, names: readonly string[], currency: string): Answers {
  const file = base === undefined ? null : answersIn(base.text);
  const parts = names.map((name, index) => {
    const from = base?.parts[index] ?? null;
    const part = from === null ? undefined : file?.parts[from];
    return part === undefined ? blankPart(name) : { ...part, name };
  });
  return { ...(file ?? blankAnswers(currency)), parts };
}

/** The base once a part is put at the end: a copy of this one, or (null) a new one. */
export const basedWithPart = ({ base }: Kept, copied: number | null): Pick<Kept, 'base'> =>
  base === undefined
    ? {}
    : { base: { ...base, parts: [...base.parts, copied === null ? null : (base.parts[copied] ?? null)] } };

/** The base once a part is taken out. */
export const basedWithoutPart = ({ base }: Kept, part: number): Pick<Kept, 'base'> =>
  base === undefined ? {} : { base: { ...base, parts: base.parts.toSpliced(part, 1) } };
