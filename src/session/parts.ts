import { matchOption } from '../questions/match-option.ts';
import type { Option } from '../questions/question.ts';
import { basedWithoutPart } from './base.ts';
import type { Kept } from './kept.ts';
import { arrive, beginPart, comeBack, detour, nameOf } from './move.ts';
import { nextPlace, withTrail } from './next.ts';
import { type Place, refused, type Session, type Step } from './session.ts';
import { type Item, isOpen } from './survey.ts';
import { PARTS, placeOf, REVIEW, samePlace } from './walk.ts';
import type { World } from './world.ts';

/** What can be done at the list of parts. */
export const PART_ACTIONS: readonly Option[] = [
  { value: 'go on', label: 'go on', about: 'all parts are in' },
  { value: 'add', label: 'add', about: 'another part' },
  {
    value: 'copy',
    label: 'copy',
    about: 'a part like one that is there, such as: copy 1',
  },
  { value: 'edit', label: 'edit', about: 'change answers of a part: edit 1' },
  {
    value: 'rename',
    label: 'rename',
    about: 'give a part another name: rename 1',
  },
  { value: 'remove', label: 'remove', about: 'take a part out: remove 1' },
];

/** A reply at the list of parts: `add`, `copy 2`, `edit Hinge`, `remove 1`, `go on`; one part needs no number. */
export function replyAtParts(session: Session, text: string, world: World): Step {
  const [, word = '', which = ''] = /^\s*(go on|\S+)\s*(.*?)\s*$/i.exec(text) ?? [];
  const action = matchOption(PART_ACTIONS, word);
  if (!action.ok) return refused(session, text, action.why.replace(', or "not sure"', ''));
  if (action.value === 'go on') return goOn(session, world);
  if (action.value === 'add') return addPart(session);
  const part = partNamed(session.kept, world, which);
  if (part === null) {
    const { length } = session.kept.parts;
    return refused(
      session,
      text,
      `Which part? Type "${action.value}" and its number from 1 to ${length}, or its name.`,
    );
  }
  if (action.value === 'copy') return copyPart(session, part, world);
  if (action.value === 'edit') return [detour(session, { at: 'review', part }), []];
  if (action.value === 'rename') return renamePart(session, part);
  return [detour(session, { at: 'remove', part }), []];
}

/** On from the list of parts. */
export function goOn(session: Session, world: World): Step {
  if (session.detours.length > 0) return [comeBack(session, REVIEW), []];
  const gone = withTrail(session);
  const open = gone.asks === 'all' ? world.survey(gone.kept).items.find(isOpenOfPart) : undefined;
  return [arrive(gone, open === undefined ? nextPlace(gone, world) : placeOf(open)), []];
}

/** Where every question is asked, what a table of parts has left open is asked before anything else. */
const isOpenOfPart = (item: Item): boolean => item.subject !== null && isOpen(item);

/** A new part. From the list of parts its questions lead back there by themselves. */
export function addPart(session: Session): Step {
  const to = nameOf(session.kept.parts.length);
  const isOnTheWay = session.at.at === 'parts' && session.detours.length === 0;
  const detours = isOnTheWay ? [] : [...session.detours, { from: session.at, to, kept: session.kept }];
  // on the way it comes back here afterwards
  const trail = isOnTheWay ? session.trail.filter((place) => !samePlace(place, PARTS)) : session.trail;
  return [beginPart({ ...session, detours, trail }, {}), []];
}

/** A part with the same answers; its name is asked, then its answers are shown to be changed. */
export function copyPart(session: Session, part: number, world: World): Step {
  const { name: _, ...answers } = session.kept.parts[part] ?? {};
  const name = world.survey(session.kept).answers.parts[part]?.name ?? '';
  const review: Place = { at: 'review', part: session.kept.parts.length };
  const copied = beginPart(detour(session, review), answers, part);
  const detours = [...copied.detours, { from: review, to: copied.at, kept: copied.kept }];
  const words = `A copy of ${name}. Give it a name; then change what is different.`;
  return [{ ...copied, detours, note: { kind: 'said', words } }, [{ kind: 'save' }]];
}

export const renamePart = (session: Session, part: number): Step => [detour(session, nameOf(part)), []];

/** yes takes the part out, no leaves it. */
export function replyAtRemove(session: Session, part: number, text: string, world: World): Step {
  const answer = text.trim().toLowerCase();
  if (/^(n|no|2)$/.test(answer)) return [comeBack(session, PARTS), []];
  if (!/^(y|yes|1)$/.test(answer))
    return refused(session, text, 'Type yes to remove the part, or no to keep it.');
  const name = world.survey(session.kept).answers.parts[part]?.name ?? '';
  const back = arrivedAnew(withoutPart(comeBack(session, PARTS), part));
  return [{ ...back, note: { kind: 'said', words: `${name} is removed.` } }, [{ kind: 'save' }]];
}

/** Taking out the last part leaves the list of parts empty, where the next is begun at once. */
const arrivedAnew = (session: Session): Session => arrive(session, session.at);

/** A part by its number or its name; the only one needs neither. */
function partNamed(kept: Kept, world: World, text: string): number | null {
  const { parts } = world.survey(kept).answers;
  if (text === '') return parts.length === 1 ? 0 : null;
  if (/^\d+$/.test(text)) return Number(text) >= 1 && Number(text) <= parts.length ? Number(text) - 1 : null;
  const name = text.toLowerCase();
  const exact = parts.findIndex((part) => part.name.toLowerCase() === name);
  if (exact >= 0) return exact;
  const near = parts.flatMap((part, index) => (part.name.toLowerCase().startsWith(name) ? [index] : []));
  return near.length === 1 ? (near[0] ?? null) : null;
}

/** Without one part: what points at a later one points at it still, what points at this one is gone. */
export function withoutPart(session: Session, part: number): Session {
  const moved = (place: Place): Place | null => {
    const subject =
      place.at === 'question'
        ? place.subject
        : place.at === 'review' || place.at === 'remove'
          ? place.part
          : null;
    if (subject === null || subject < part) return place;
    if (subject === part) return null;
    return place.at === 'question'
      ? { ...place, subject: subject - 1 }
      : ({ ...place, part: subject - 1 } as Place);
  };
  const without = (kept: Kept): Kept => ({
    ...kept,
    parts: kept.parts.toSpliced(part, 1),
    ...basedWithoutPart(kept, part),
  });
  return {
    ...session,
    kept: without(session.kept),
    at: moved(session.at) ?? PARTS,
    trail: session.trail.flatMap((place) => moved(place) ?? []),
    detours: session.detours.flatMap((each) => {
      const [from, to] = [moved(each.from), moved(each.to)];
      return from === null || to === null ? [] : [{ from, to, kept: without(each.kept) }];
    }),
  };
}
