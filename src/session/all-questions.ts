import { notAsked } from './because.ts';
import type { Place, Session } from './session.ts';
import { type Item, isOpen } from './survey.ts';
import { placeOf } from './walk.ts';
import type { World } from './world.ts';

/** One question in the list of all: where it is asked, and how it stands. */
export interface QuestionLine {
  readonly place: Place;
  /** name of the part; null: about the shop */
  readonly part: string | null;
  readonly title: string;
  readonly state: 'answered' | 'usual' | 'not sure' | 'open' | 'not asked' | 'does not apply';
}

/** Every question in the order in which it is asked, those that do not apply now included. */
export function allQuestions(session: Session, world: World): readonly QuestionLine[] {
  const { items, answers } = world.survey(session.kept);
  const skipped = notAsked(session, world);
  return items.map((item) => ({
    place: placeOf(item),
    part: item.subject === null ? null : (answers.parts[item.subject]?.name ?? null),
    title: item.question.title,
    state: skipped?.has(item) ? 'not asked' : stateOf(item),
  }));
}

function stateOf(item: Item): QuestionLine['state'] {
  const { applies, given } = item;
  if (!applies) return 'does not apply';
  if (isOpen(item) || given === undefined) return 'open';
  return given.from === 'typed' ? 'answered' : given.from;
}
