import { type DescribeContext, describeUnsure, describeValue } from '../questions/describe-value.ts';
import type { Question, Section } from '../questions/question.ts';
import { notAsked, takenMeanwhile } from './because.ts';
import { findPlace } from './find-place.ts';
import type { Given, Subject } from './kept.ts';
import { detour } from './move.ts';
import { refused, type Session, type Step } from './session.ts';
import { type Item, isOpen } from './survey.ts';
import { placeOf, walkOf } from './walk.ts';
import { type World, wordsIn } from './world.ts';

/** One line of the review. */
export interface ReviewLine {
  /** of the question, from 1: typed to change the answer; null where it does not apply now */
  readonly number: number | null;
  /** name of the part; null: about the shop */
  readonly part: string | null;
  readonly section: Section;
  readonly title: string;
  /** the answer, or what is taken without one; null where that is nothing */
  readonly words: string | null;
  /** `ignored`: kept, but it does not apply now; `not asked`: it cannot change the result any more */
  readonly state: 'typed' | 'usual' | 'not sure' | 'open' | 'not asked' | 'ignored';
  /** not asked: what is taken for known meanwhile, so that another value may change the result; else null */
  readonly taken: string | null;
  /** ids of the checks, stages and measures that read the answer */
  readonly readBy: readonly string[];
  /** why an answer cannot stand beside the others */
  readonly objection: string | null;
}

/** Every answer in order, of one part or of all; what does not apply is listed where an answer to it is kept. */
export function reviewLines(session: Session, part: Subject, world: World): readonly ReviewLine[] {
  const { items, answers } = world.survey(session.kept);
  const questions = walkOf(session.kept, world).filter(({ at }) => at === 'question');
  const numbers = new Map(questions.map((place, index) => [JSON.stringify(place), index + 1]));
  const skipped = notAsked(session, world);
  return items
    .filter(
      ({ applies, given, subject }) =>
        (part === null || subject === part) && (applies || given !== undefined),
    )
    .map((item) => ({
      number: numbers.get(JSON.stringify(placeOf(item))) ?? null,
      part: item.subject === null ? null : (answers.parts[item.subject]?.name ?? null),
      section: item.question.section,
      title: item.question.title,
      readBy: item.question.readBy,
      ...standing(item, session, world),
      ...(skipped?.has(item)
        ? { state: 'not asked' as const, taken: takenMeanwhile(item.question) }
        : { taken: null }),
      objection: item.objection,
    }));
}

function standing(item: Item, session: Session, world: World): Pick<ReviewLine, 'words' | 'state'> {
  const { question, given, applies } = item;
  const context = wordsIn(session.kept, world);
  if (given === undefined) return { words: question.preset?.words ?? null, state: 'open' };
  const words = givenWords(question, given, context);
  if (!applies) return { words, state: 'ignored' };
  return { words, state: isOpen(item) ? 'open' : given.from };
}

/** An answer in words: what was typed, what is usual, or what 'not sure' stands for. */
export function givenWords(question: Question, given: Given, context: DescribeContext): string {
  if (given.from === 'not sure') return describeUnsure(question, context);
  if (given.from === 'usual' && question.preset !== null) return question.preset.words;
  return describeValue(question.field, given.value, context);
}

/** A reply at the review: the number of an answer, or words of its title, to change it. */
export function replyAtReview(session: Session, part: Subject, text: string, world: World): Step {
  const at = part === null ? session.at : ({ at: 'question', id: 'name', subject: part } as const);
  const found = findPlace({ ...session, at }, world, text);
  return found.ok ? [detour(session, found.place), []] : refused(session, text, found.why);
}
