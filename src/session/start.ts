import type { LengthUnits } from '../quantities/kinds.ts';
import { type Kept, NOTHING_KEPT, withGiven } from './kept.ts';
import { arrive } from './move.ts';
import { nextPlace } from './next.ts';
import type { Saved } from './saved.ts';
import type { Asks, Place, Session } from './session.ts';
import { comesFirst, isOpen } from './survey.ts';
import { itemAt, PARTS, placeOf, RESULT, REVIEW, TRIAL } from './walk.ts';
import type { World } from './world.ts';

/** A new interview, at its first question. `units`: asked for when the program was started. */
export function newSession(
  world: World,
  catalogs: readonly string[],
  units: LengthUnits | null,
  asks: Asks = 'needed',
): Session {
  return goOnFrom(blank(withUnits(NOTHING_KEPT, units), catalogs, asks), REVIEW, world);
}

/** A saved interview, at its first open question. */
export function resumed(
  saved: Saved,
  world: World,
  catalogs: readonly string[],
  units: LengthUnits | null,
): Session {
  return goOnFrom(savedAsItWas(saved, catalogs, units), saved.position, world);
}

/** A saved interview was found: it is offered, and nothing is begun yet. */
export function offered(saved: Saved, catalogs: readonly string[], units: LengthUnits | null): Session {
  return { ...savedAsItWas(saved, catalogs, units), at: { at: 'resume' } };
}

/** The answers as they were saved, what was tried, and the variants. */
function savedAsItWas(
  { answers, asks, trial, variants = [] }: Saved,
  catalogs: readonly string[],
  units: LengthUnits | null,
): Session {
  const kept = withUnits(answers, units);
  const session: Session = {
    ...blank(kept, catalogs, asks),
    variants: variants.map((each) => ({ ...each, kept: withUnits(each.kept, units) })),
  };
  if (trial === undefined) return session;
  const before = { kept, at: RESULT, detours: [], trail: [] };
  return { ...session, kept: withUnits(trial.kept, units), trial: { before, of: trial.of } };
}

/**
 * At what is tried, if anything is; at the first open question, or the one to ask next; where there is none, at the place
 * where it stood, if that is a place still.
 */
export function goOnFrom(session: Session, position: Place, world: World): Session {
  if (session.trial !== null) return { ...session, at: TRIAL, detours: [] };
  const open = world.survey(session.kept).items.find(isOpen);
  if (session.kept.parts.length === 0 && (open === undefined || !comesFirst(open.question)))
    return arrive(session, PARTS);
  if (open !== undefined) {
    const at = { ...session, at: REVIEW };
    return arrive(session, session.asks === 'all' ? placeOf(open) : nextPlace(at, world));
  }
  const isThere = position.at === 'question' && itemAt(position, session.kept, world)?.applies === true;
  return arrive(session, isThere ? position : REVIEW);
}

const blank = (kept: Kept, catalogs: readonly string[], asks: Asks): Session => ({
  kept,
  at: REVIEW,
  detours: [],
  note: null,
  catalogs,
  asks,
  trail: [],
  trial: null,
  variants: [],
});

const withUnits = (kept: Kept, units: LengthUnits | null): Kept =>
  units === null ? kept : withGiven(kept, null, 'units', { from: 'typed', value: units });
