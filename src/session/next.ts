import { isBasicFact } from '../questions/basic-facts.ts';
import type { AskingNow } from './asking-now.ts';
import type { Place, Session } from './session.ts';
import { comesFirst, type Item, isOpen } from './survey.ts';
import { itemAt, NEXT, neighbor, PARTS, placeOf, REVIEW, samePlace, walkOf } from './walk.ts';
import type { World } from './world.ts';

type Standing = Pick<Session, 'kept' | 'asks'>;

/** Open questions that are asked whatever they may change: basic facts, and what contradicts another answer. */
export function openBasics({ kept }: Pick<Session, 'kept'>, world: World): readonly Item[] {
  const { answers, items } = world.survey(kept);
  return items.filter(
    (item) => isOpen(item) && (isBasicFact(item.question, answers) || item.objection !== null),
  );
}

/**
 * Which questions can still change the result. Null where that is not asked: while basic facts are open, while nothing
 * can be judged, and where every question is asked anyway.
 */
export function worthAsking(session: Standing, world: World): AskingNow | 'later' | null {
  if (session.asks === 'all' || openBasics(session, world).length > 0) return null;
  if (!world.survey(session.kept).items.some(isOpen)) return null;
  return world.asking(session.kept);
}

/**
 * What comes after the place where the session stands. Where everything is asked, the next one on the way; else basic
 * facts in their order, with the list of parts after those of the parts, then what can still change the result, as
 * long as something can. `NEXT` while that is being worked out.
 */
export function nextPlace(session: Session, world: World): Place {
  if (session.asks === 'all') return neighbor(session, world, 1) ?? REVIEW;
  const basics = openBasics(session, world);
  const ofParts = basics.filter(({ question, subject }) => subject !== null || comesFirst(question));
  // what must be held is chosen among all of them
  const early = ofParts.find(({ question }) => question.id !== 'must') ?? ofParts[0];
  if (early !== undefined) return placeOf(early);
  if (isLastOfParts(session, world)) return PARTS;
  const [basic] = basics;
  if (basic !== undefined) return placeOf(basic);
  const open = world.survey(session.kept).items.find(isOpen);
  if (open === undefined) return REVIEW;
  const asking = worthAsking(session, world);
  if (asking === 'later') return NEXT;
  if (asking === null) return placeOf(open);
  const [first] = asking.questions;
  return first === undefined ? REVIEW : { at: 'question', id: first.id, subject: first.subject };
}

/** Whether it stands at a basic fact that leads to the list of parts, and that was not gone on from yet. */
function isLastOfParts({ at, kept, trail }: Session, world: World): boolean {
  const question = itemAt(at, kept, world)?.question;
  if (question === undefined || !isBasicFact(question, world.survey(kept).answers)) return false;
  return (question.of === 'part' || comesFirst(question)) && !trail.some((place) => samePlace(place, PARTS));
}

/** The place that was gone on from before this one; null where there is none. */
export function placeBefore(session: Session, world: World): Place | null {
  if (session.asks === 'all') return neighbor(session, world, -1);
  const { kept, at, trail } = session;
  const answered = new Set(
    world
      .survey(kept)
      .items.filter(({ applies, given }) => applies && given !== undefined)
      .map((item) => JSON.stringify(placeOf(item))),
  );
  const isThere = (place: Place): boolean => place.at === 'parts' || answered.has(JSON.stringify(place));
  // what a changed answer opens is asked in the order of the interview, and so is the way back
  if (at.at === 'question' && session.detours.length > 0) {
    const walk = walkOf(kept, world);
    const here = walk.findIndex((place) => samePlace(place, at));
    if (here >= 0) return walk.slice(0, here).findLast(isThere) ?? null;
  }
  // of what was answered before the program was started, the order is that of the interview
  const earlier = walkOf(kept, world).filter(
    (place) => place.at === 'question' && isThere(place) && !trail.some((each) => samePlace(each, place)),
  );
  const gone = [...earlier, ...trail.filter(isThere)];
  const here = gone.findIndex((place) => samePlace(place, at));
  return (here < 0 ? gone.at(-1) : gone[here - 1]) ?? null;
}

/** The way that was gone, once it is gone on from here. */
export const withTrail = (session: Session): Session =>
  session.trail.some((place) => samePlace(place, session.at))
    ? session
    : { ...session, trail: [...session.trail, session.at] };
