import { isBasicFact } from '../questions/basic-facts.ts';
import { basedWithPart } from './base.ts';
import type { GivenAnswers, Kept } from './kept.ts';
import { nextPlace, withTrail } from './next.ts';
import type { Detour, Place, Session } from './session.ts';
import { type Item, isOpen } from './survey.ts';
import { itemAt, placeOf, REVIEW, samePlace } from './walk.ts';
import type { World } from './world.ts';

/** Stands at a place. At the list of parts while there is none, the first part is begun at once. */
export function arrive(session: Session, place: Place): Session {
  if (place.at === 'parts' && session.kept.parts.length === 0) return beginPart(session, {});
  return { ...session, at: place };
}

/**
 * Begins a part with these answers, if any, and asks for its name; afterwards goes on from there.
 * `copied`: the part that it is a copy of.
 */
export function beginPart(session: Session, answers: GivenAnswers, copied: number | null = null): Session {
  const { kept } = session;
  const more: Kept = { ...kept, parts: [...kept.parts, answers], ...basedWithPart(kept, copied) };
  return { ...session, kept: more, at: nameOf(kept.parts.length) };
}

export const nameOf = (part: number): Place => ({ at: 'question', id: 'name', subject: part });

/** Goes to a place on request, to come back afterwards. */
export const detour = (session: Session, place: Place): Session =>
  arrive({ ...session, detours: detoursTo(session, place) }, place);

/** The detours once one goes to `place`: a place that is on the way back already is simply gone back to. */
function detoursTo({ detours, at, kept }: Session, place: Place): readonly Detour[] {
  const known = detours.findIndex((each) => samePlace(each.from, place));
  if (known >= 0) return detours.slice(0, known);
  return samePlace(at, place) ? detours : [...detours, { from: at, to: place, kept }];
}

/** Back from a detour; without one, to `otherwise`. */
export function comeBack(session: Session, otherwise: Place): Session {
  const { detours } = session;
  return arrive({ ...session, detours: detours.slice(0, -1) }, detours.at(-1)?.from ?? otherwise);
}

/** On from an answered question: to what has opened since the detour began, then back; without one, to the next. */
export function advance(session: Session, world: World): Session {
  const since = session.detours.at(-1);
  if (since === undefined) return arrive(withTrail(session), nextPlace(session, world));
  const opened = firstOpened(session, since, world);
  return opened === undefined ? comeBack(session, REVIEW) : arrive(session, placeOf(opened));
}

/**
 * The first question, after this one and about the same part, that is open now and was not, or was not asked, then. Where
 * only what is needed is asked, a basic fact or a contradiction.
 */
function firstOpened(session: Session, since: Detour, world: World): Item | undefined {
  const here = itemAt(session.at, session.kept, world);
  const { answers, items } = world.survey(session.kept);
  const from = here === undefined ? items.length : items.indexOf(here) + 1;
  return items.slice(from).find((item) => {
    if (item.subject !== here?.subject || !isOpen(item)) return false;
    const isAsked = session.asks === 'all' || item.objection !== null || isBasicFact(item.question, answers);
    if (!isAsked) return false;
    const then = itemAt(placeOf(item), since.kept, world);
    return then === undefined || !isOpen(then);
  });
}
