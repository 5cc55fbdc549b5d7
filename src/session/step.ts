import { isNotSure } from '../questions/read-reply.ts';
import { acceptShown, reply, take } from './answer.ts';
import { replyAtFile, replyAtOverwrite, replyAtResult, replyAtResume, written } from './files.ts';
import { findPlace } from './find-place.ts';
import { firstNeeded } from './first-needed.ts';
import { isBegun } from './kept.ts';
import { arrive, comeBack, detour } from './move.ts';
import { nextPlace, placeBefore } from './next.ts';
import { addPart, copyPart, goOn, renamePart, replyAtParts, replyAtRemove, withoutPart } from './parts.ts';
import { replyAtReview } from './review.ts';
import { type Event, type Place, refused, type Session, type Step, type Written } from './session.ts';
import { switched } from './switched.ts';
import { takeTable } from './take-table.ts';
import { dropTrial, keepTrial, replyAtTrial, settled, tryAt, tryFound } from './trial.ts';
import {
  keepVariant,
  leftTrial,
  lookAt,
  NO_VARIANT,
  nameTrial,
  removeVariant,
  replyAtNaming,
  replyAtVariants,
  replyWhileTried,
} from './variants.ts';
import { itemAt, PARTS, RESULT, REVIEW, samePlace, TRIAL } from './walk.ts';
import type { World } from './world.ts';

/**
 * One turn of the conversation: what happened, and what is to be done about it. Pure: the same session, event and
 * world give the same step. Going anywhere never loses an answer.
 */
export function step(session: Session, event: Event, world: World): Step {
  // what the last answer brought about is still to be said where the next question was waited for
  const fresh = event.type === 'next' ? session : { ...session, note: null };
  const [next, effects] = turn(fresh, event, world);
  return [settled(withoutEmptyPart(next)), effects];
}

function turn(session: Session, event: Event, world: World): Step {
  switch (event.type) {
    case 'reply':
      return replied(session, event.text, world);
    case 'accept':
      return accepted(session, world);
    case 'not-sure':
      return notSure(session, 'not sure', world);
    case 'next':
      return waitedFor(session, world);
    case 'ask':
      return switched(session, event.asks, world);
    case 'back':
      return [back(session, world), []];
    case 'go':
      return went(session, event.to, world);
    case 'find': {
      const found = findPlace(session, world, event.text);
      return found.ok ? went(session, found.place, world) : refused(session, event.text, found.why);
    }
    case 'add-part':
      return addPart(session);
    case 'copy-part':
      return copyPart(session, event.part, world);
    case 'edit-part':
      return [detour(session, { at: 'review', part: event.part }), []];
    case 'remove-part':
      return [detour(session, { at: 'remove', part: event.part }), []];
    case 'rename-part':
      return renamePart(session, event.part);
    case 'table':
      return takeTable(session, event.text, world);
    case 'read-table':
      return [session, [{ kind: 'read', file: event.file }]];
    case 'not-read':
      return refused(session, event.file, `The table in ${event.file} is not read: ${event.why}.`);
    case 'try':
      return tryAt(session, event.to, world);
    case 'try-find':
      return tryFound(session, event.text, world);
    case 'keep':
      return keepTrial(session);
    case 'drop':
      return dropTrial(session);
    case 'name':
      return nameTrial(session, event.name);
    case 'look':
      return lookAt(session, event.variant);
    case 'keep-variant':
      return keepVariant(session, event.variant);
    case 'remove-variant':
      return removeVariant(session, event.variant);
    case 'write':
      return write(session, event.what, event.file, world);
    case 'written':
      return written(session, event.what, event.file);
    case 'exists':
      return [
        detour(session, {
          at: 'overwrite',
          what: event.what,
          file: event.file,
        }),
        [],
      ];
    case 'not-written':
      return refused(
        session,
        event.file,
        `Not written to ${event.file}: ${event.why}. Type another name, or "back".`,
      );
  }
}

/** Asks where a file should go, unless that is said already. */
function write(session: Session, what: Written, file: string | null, world: World): Step {
  if (what !== 'answers' && world.decision(session.kept) === null)
    return refused(session, '', noResultYet(session.kept, world));
  if (what === 'variants' && session.variants.length === 0) return refused(session, '', NO_VARIANT);
  if (what === 'answers' && !session.kept.parts.some(isBegun)) return refused(session, '', NO_PART);
  return file === null ? [detour(session, { at: 'file', what }), []] : replyAtFile(session, what, file);
}

const NO_PART = 'There is nothing to write yet: an answers file needs at least one part.';
/** Said where a result is asked for and there is none. */
export const noResultYet = (kept: Session['kept'], world: World): string =>
  `There is no result yet: ${firstNeeded(world.survey(kept))}.`;

function replied(session: Session, text: string, world: World): Step {
  const { at } = session;
  switch (at.at) {
    case 'question': {
      if (isNotSure(text)) return notSure(session, text, world);
      const item = itemAt(at, session.kept, world);
      return item === undefined ? [arrive(session, REVIEW), []] : reply(session, item, text, world);
    }
    case 'parts':
      return replyAtParts(session, text, world);
    case 'remove':
      return replyAtRemove(session, at.part, text, world);
    case 'review':
      return replyAtReview(session, at.part, text, world);
    case 'resume':
      return replyAtResume(session, text, world);
    case 'result':
      return replyAtResult(session, text);
    case 'file':
      return replyAtFile(session, at.what, text);
    case 'overwrite':
      return replyAtOverwrite(session, at, text);
    case 'next':
      return waitedFor(session, world);
    case 'trial':
      return replyWhileTried(session, text, world);
    case 'naming':
      return replyAtNaming(session, text);
    case 'variants':
      return replyAtVariants(session, text);
    case 'done':
      return [session, []];
  }
}

/** Enter with nothing typed. */
function accepted(session: Session, world: World): Step {
  const { at } = session;
  switch (at.at) {
    case 'question': {
      const item = itemAt(at, session.kept, world);
      return item === undefined ? [arrive(session, REVIEW), []] : acceptShown(session, item, world);
    }
    case 'parts':
      return goOn(session, world);
    case 'review':
      return at.part === null ? went(session, { at: 'result' }, world) : [comeBack(session, PARTS), []];
    case 'resume':
      return replyAtResume(session, 'resume', world);
    case 'result':
      return replyAtResult(session, '');
    case 'file':
      return replyAtFile(session, at.what, '');
    case 'next':
      return waitedFor(session, world);
    case 'trial':
      return replyAtTrial(session, '', world);
    case 'naming':
      return replyAtNaming(session, '');
    case 'variants':
      return [comeBack(session, RESULT), []];
    default:
      return refused(session, '', 'Type yes or no.');
  }
}

/** On to the question that was waited for, if it is known by now; what was saved meanwhile does not name it. */
function waitedFor(session: Session, world: World): Step {
  if (session.at.at !== 'next') return [session, []];
  const next = arrive(session, nextPlace(session, world));
  return [next, next.at.at === 'next' ? [] : [{ kind: 'save' }]];
}

function notSure(session: Session, typed: string, world: World): Step {
  const item = itemAt(session.at, session.kept, world);
  if (item === undefined) return refused(session, typed, 'Nothing is asked here that could be left open.');
  return take(session, item, { from: 'not sure' }, world);
}

/** To the place before this one; what is answered later stays answered. */
function back(session: Session, world: World): Session {
  const { at, detours } = session;
  const start = detours.at(-1);
  if (start !== undefined && samePlace(start.to, at)) return comeBack(session, PARTS);
  if (at.at === 'trial') return leftTrial(session);
  const before = placeBefore(session, world);
  if (before !== null) return arrive(session, before);
  if (at.at === 'question' || at.at === 'resume') {
    return { ...session, note: { kind: 'said', words: 'This is the first question.' } };
  }
  if (at.at === 'result') return comeBack(session, session.trial === null ? REVIEW : TRIAL);
  return comeBack(session, at.at === 'variants' ? RESULT : PARTS);
}

/** To a place on request. From an open question to another one it simply goes; otherwise it comes back afterwards. */
function went(session: Session, to: Place, world: World): Step {
  if (to.at === 'result' && world.decision(session.kept) === null)
    return refused(session, '', noResultYet(session.kept, world));
  if (to.at === 'variants' && session.variants.length === 0) return refused(session, '', NO_VARIANT);
  const item = itemAt(to, session.kept, world);
  if (to.at === 'question' && item === undefined)
    return refused(session, '', 'That question does not apply now.');
  if (
    item !== undefined &&
    item.given === undefined &&
    session.detours.length === 0 &&
    session.trial === null
  )
    return [arrive(session, to), []];
  return [detour(session, to), []];
}

/** A part that was begun and left without a single answer is no part. */
function withoutEmptyPart(session: Session): Session {
  const { at, kept } = session;
  const here = at.at === 'question' ? at.subject : at.at === 'review' || at.at === 'remove' ? at.part : null;
  const empty = kept.parts.findIndex((answers, index) => index !== here && !isBegun(answers));
  return empty < 0 ? session : withoutPart(session, empty);
}
