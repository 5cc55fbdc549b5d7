import { isBasicFact } from '../questions/basic-facts.ts';
import { describeValue } from '../questions/describe-value.ts';
import type { Session } from './session.ts';
import { type Item, isOpen, type Survey } from './survey.ts';
import { type World, wordsIn } from './world.ts';

/** One part in the list of parts. */
export interface PartLine {
  readonly name: string;
  readonly summary: string;
  /** questions that are asked in any case and have no answer yet */
  readonly open: number;
}

export function partLines(session: Session, survey: Survey, world: World): readonly PartLine[] {
  const context = wordsIn(session.kept, world);
  const isAsked = (item: Item): boolean =>
    isOpen(item) &&
    (session.asks === 'all' || item.objection !== null || isBasicFact(item.question, survey.answers));
  return survey.answers.parts.map(({ name }, index) => {
    const own = survey.items.filter((item) => item.subject === index);
    const summary = own.flatMap(({ question, applies, given }) => {
      if (!SUMMARY.has(question.id) || !applies || given?.from !== 'typed') return [];
      const words = describeValue(question.field, given.value, context);
      return [NAMED.has(question.id) ? `${question.title.toLowerCase()} ${words}` : words];
    });
    return { name, summary: summary.join(', '), open: own.filter(isAsked).length };
  });
}

/** Which of two lengths it is does not show otherwise. */
const NAMED = new Set(['diameter', 'length']);
const SUMMARY = new Set(['shape', 'size', 'diameter', 'length', 'material', 'approaches']);
