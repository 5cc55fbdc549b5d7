import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers } from '../questions/answers.ts';
import { QUESTIONS } from '../questions/index.ts';
import type { Given, GivenAnswers, Kept } from './kept.ts';
import type { Session } from './session.ts';
import { goOnFrom } from './start.ts';
import { REVIEW } from './walk.ts';
import type { World } from './world.ts';

/** An answers file that was read. */
export interface OpenedFile {
  readonly answers: Answers;
  readonly shownIn: LengthUnits;
  readonly text: string;
}

/**
 * An interview that goes on from an answers file: what the file says is answered, what it leaves unknown is
 * 'not sure'; what no question asks stays as the file has it. Stands at the first open question, or at the review.
 */
export function opened({ answers, shownIn, text }: OpenedFile, session: Session, world: World): Session {
  const kept: Kept = {
    shop: { ...givenOf('shop', answers, 0), units: { from: 'typed', value: shownIn } },
    parts: answers.parts.map((_, index) => givenOf('part', answers, index)),
    base: { text, parts: answers.parts.map((_, index) => index) },
  };
  const tried = { trial: null, variants: [] };
  return goOnFrom({ ...session, kept, detours: [], trail: [], note: null, ...tried }, REVIEW, world);
}

function givenOf(of: 'shop' | 'part', answers: Answers, index: number): GivenAnswers {
  const asked = QUESTIONS.filter((question) => question.of === of && question.applies(answers, index));
  return Object.fromEntries(
    asked.map((question): [string, Given] => {
      const value = question.get(answers, index);
      return [question.id, value === 'unknown' ? { from: 'not sure' } : { from: 'typed', value }];
    }),
  );
}
