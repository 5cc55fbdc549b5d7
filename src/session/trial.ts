import { findPlace } from './find-place.ts';
import { firstNeeded } from './first-needed.ts';
import { comeBack, detour } from './move.ts';
import { type Place, refused, type Session, type Step, type Trial } from './session.ts';
import { itemAt, RESULT, TRIAL } from './walk.ts';
import type { World } from './world.ts';

/** The answers of the interview, whatever is tried. */
export const presentOf = ({ kept, trial }: Session): Session['kept'] => trial?.before.kept ?? kept;

/** The interview without what is tried. */
export const withoutTrial = (session: Session): Session =>
  session.trial === null ? session : { ...session, ...session.trial.before, trial: null };

/** Asks a question again, to try another answer; the answers of the interview stay as they are meanwhile. */
export function tryAt(session: Session, to: Place, world: World): Step {
  if (to.at === 'question' && itemAt(to, session.kept, world)?.applies !== true) {
    return refused(session, '', 'That question does not apply now.');
  }
  return [detour(trying(session), to), []];
}

/** The same by words of its title, a number in the review, or the name of a part. Where there is no result, nothing is tried. */
export function tryFound(session: Session, text: string, world: World): Step {
  if (session.at.at === 'resume') return refused(session, text, 'Type resume first, to go on with it.');
  if (world.decision(session.kept) === null) {
    return refused(session, text, `There is nothing to try yet: ${firstNeeded(world.survey(session.kept))}.`);
  }
  if (text.trim() === '') {
    const why = 'Which answer? Type "what if" and words of its title, such as: what if budget.';
    return refused(session, text, why);
  }
  const found = findPlace(session, world, text);
  return found.ok ? tryAt(session, found.place, world) : refused(session, text, found.why);
}

function trying(session: Session): Session {
  const { kept, at, detours, trail } = session;
  const trial: Trial = session.trial ?? { before: { kept, at, detours, trail }, of: null };
  return { ...session, trial, at: TRIAL, detours: [] };
}

const NOTHING_TRIED = 'Nothing is tried now: "what if" and words of an answer begin that, at the result.';

/** What is tried becomes the answers of the interview. A variant that says just that is none any more. */
export function keepTrial(session: Session): Step {
  const { trial, kept, variants } = session;
  if (trial === null) return refused(session, '', NOTHING_TRIED);
  const { before } = trial;
  // places may name parts that are gone
  const isThere = kept.parts.length === before.kept.parts.length;
  const back = isThere
    ? { at: before.at, detours: before.detours, trail: before.trail }
    : { at: RESULT, detours: [], trail: [] };
  const now: Session = {
    ...session,
    ...back,
    trial: null,
    variants: variants.filter((each) => JSON.stringify(each.kept) !== JSON.stringify(kept)),
  };
  const words = 'Kept: what was tried is what the interview goes on with.';
  const shown = now.at.at === 'variants' ? comeBack(now, RESULT) : now;
  return [{ ...shown, note: { kind: 'said', words } }, [{ kind: 'save' }]];
}

/** What is tried is forgotten: all is as it was before. */
export function dropTrial(session: Session): Step {
  const { trial } = session;
  if (trial === null) return refused(session, '', NOTHING_TRIED);
  const words =
    trial.of === null
      ? 'Dropped: every answer is as it was before.'
      : `Every answer is as it was before; ${trial.of} stays among the variants.`;
  return [{ ...withoutTrial(session), note: { kind: 'said', words } }, [{ kind: 'save' }]];
}

/** Whoever comes back without having changed anything tries nothing. */
export function settled(session: Session): Session {
  const { trial, at, kept, note } = session;
  if (at.at !== 'trial' || trial === null || trial.of !== null || note?.kind === 'error') return session;
  if (JSON.stringify(kept) !== JSON.stringify(trial.before.kept)) return session;
  const words = 'Nothing is changed: that is the answer already.';
  return { ...withoutTrial(session), note: note?.kind === 'accepted' ? { kind: 'said', words } : note };
}

/** What can be typed while something is tried; everything else is looked for among the questions. */
export function replyAtTrial(session: Session, text: string, world: World): Step {
  const typed = text.trim().toLowerCase();
  if (/^(k|keep)$/.test(typed)) return keepTrial(session);
  if (/^(d|drop)$/.test(typed)) return dropTrial(session);
  const found = findPlace(session, world, text);
  if (found.ok) return tryAt(session, found.place, world);
  return refused(session, text, typed === '' ? OPEN : found.why);
}

/** Said where one wants to go away from what is tried. */
export const OPEN = 'It is still being tried: keep it, drop it, or give it a name.';
