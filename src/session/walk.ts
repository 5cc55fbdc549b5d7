import type { Kept } from './kept.ts';
import type { Place, Session } from './session.ts';
import { comesFirst, type Item } from './survey.ts';
import type { World } from './world.ts';

export const PARTS: Place = { at: 'parts' };
export const REVIEW: Place = { at: 'review', part: null };
/** Which question comes next is being worked out. */
export const NEXT: Place = { at: 'next' };
export const RESULT: Place = { at: 'result' };
export const TRIAL: Place = { at: 'trial' };
export const VARIANTS: Place = { at: 'variants' };

export const placeOf = ({ question, subject }: Item): Place => ({
  at: 'question',
  id: question.id,
  subject,
});

/** The item that a place asks for; undefined where it asks for none. */
export function itemAt(place: Place, kept: Kept, world: World): Item | undefined {
  if (place.at !== 'question') return undefined;
  return world
    .survey(kept)
    .items.find(({ question, subject }) => question.id === place.id && subject === place.subject);
}

export const samePlace = (a: Place, b: Place): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The way through the interview: every question that applies, the list of parts after the last part, the review. */
export function walkOf(kept: Kept, world: World): readonly Place[] {
  const asked = world.survey(kept).items.filter((item) => item.applies);
  const comesLast = ({ question }: Item) => question.of === 'shop' && !comesFirst(question);
  return [
    ...asked.filter((item) => !comesLast(item)).map(placeOf),
    PARTS,
    ...asked.filter(comesLast).map(placeOf),
    REVIEW,
  ];
}

/** One place on, or back; null where there is none. */
export function neighbor(session: Session, world: World, by: 1 | -1): Place | null {
  const walk = walkOf(session.kept, world);
  const here = walk.findIndex((place) => samePlace(place, session.at));
  return walk[here + by] ?? null;
}
