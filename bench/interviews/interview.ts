import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { unknownsIn } from '../../src/rules/asking/asking.ts';
import type { Unknown } from '../../src/rules/decision.ts';
import { isSameResult, runningOf, type Standing } from '../../src/rules/standing.ts';
import { type Asked, answeredWith, applies, everyQuestion, isAbout } from './asked.ts';
import { isFixedFact } from './fixed-facts.ts';

/** Which of these questions comes next; each of them may still change the result. */
export type Order = (open: readonly Asked[], standing: Standing, answers: Answers) => Asked | undefined;

export interface Interview {
  /** questions until the result is proven, the basic facts among them */
  readonly untilProven: number;
  /** until at most three arrangements may still win */
  readonly untilThree: number;
  /** questions that apply and were never asked, because they could no longer change the result */
  readonly skipped: number;
  /** the result is that of the full answers */
  readonly isRight: boolean;
  readonly outcome: Standing['outcome'];
}

/** What the answers so far leave open that somebody can still say, of the arrangements that may win. */
const openTo = (standing: Standing, answers: Answers): readonly Unknown[] =>
  unknownsIn(standing, answers).filter(({ ask }) => ask === 'you');

export const FEW = 3;

/**
 * An interview with a shop that answers every question that it is asked. First the basic facts; then, while something
 * that can still change the result is not known, what the order says.
 */
export function interviewed(truth: Answers, catalog: Catalog, order: Order): Interview {
  const whole = runningOf(truth, catalog);
  const questions = everyQuestion(truth.parts.length);
  const asked = new Set<Asked>();
  let answers: Answers = {
    ...blankAnswers(truth.currency),
    parts: truth.parts.map(({ name }) => blankPart(name)),
  };
  const ask = (question: Asked): void => {
    answers = answeredWith(question, answers, truth);
    asked.add(question);
  };
  for (const question of questions) if (isFixedFact(question) && applies(question, answers)) ask(question);
  let standing = runningOf(answers, catalog);
  let untilThree: number | null = null;
  for (;;) {
    if (untilThree === null && standing.ranking.contenders.length <= FEW) untilThree = asked.size;
    const unknowns = openTo(standing, answers);
    const open = questions.filter(
      (each) =>
        !asked.has(each) &&
        applies(each, answers) &&
        unknowns.some(({ answer }) => isAbout(each, answer, answers)),
    );
    const next = order(open, standing, answers);
    if (next === undefined) break;
    ask(next);
    // what surely fails goes on failing as answers become known
    standing = runningOf(answers, catalog, new Set(standing.running.map(({ id }) => id)));
  }
  return {
    untilProven: asked.size,
    untilThree: untilThree ?? asked.size,
    skipped: questions.filter((each) => !asked.has(each) && applies(each, answers)).length,
    isRight: isSameResult(standing, whole),
    outcome: standing.outcome,
  };
}
