import type { Value } from '../questions/question.ts';
import { readReply } from '../questions/read-reply.ts';
import { type Given, withGiven } from './kept.ts';
import { advance } from './move.ts';
import { refused, type Session, type Step } from './session.ts';
import type { Item } from './survey.ts';
import { unitsOf, type World } from './world.ts';

/** Reads what was typed as the answer to the question, takes it or says what is accepted. */
export function reply(session: Session, item: Item, text: string, world: World): Step {
  const context = { units: unitsOf(session.kept), offer: world.setting.offer };
  const reading = readReply(item.question.field, text, context);
  if (!reading.ok) return refused(session, text, reading.why);
  const why = objectionTo(session, item, reading.value, world);
  if (why !== null) return refused(session, text, why);
  return take(
    session,
    item,
    reading.value === 'unknown' ? { from: 'not sure' } : { from: 'typed', value: reading.value },
    world,
  );
}

/** Takes what is shown: the answer as it stands, or the usual one. */
export function acceptShown(session: Session, item: Item, world: World): Step {
  const { preset } = item.question;
  if (item.given !== undefined && item.objection === null) return take(session, item, item.given, world);
  if (preset !== null) return take(session, item, { from: 'usual', value: preset.value }, world);
  return refused(session, '', 'Nothing is typed yet: give an answer, or type "not sure".');
}

/** Takes an answer and goes on. */
export function take(session: Session, item: Item, given: Given, world: World): Step {
  const { question, subject } = item;
  const same = JSON.stringify(item.given) === JSON.stringify(given);
  const kept = same ? session.kept : withGiven(session.kept, subject, question.id, given);
  const note = { kind: 'accepted', id: question.id, subject, given, before: session.kept } as const;
  const next: Session = { ...session, kept, note };
  return [advance(next, world), [{ kind: 'save' }]];
}

/** Names that differ in capitals or in the width of letters only would be taken for each other. */
export const sameName = (a: string, b: string): boolean =>
  a.normalize('NFKC').toLowerCase() === b.normalize('NFKC').toLowerCase();

/** Why a value cannot stand beside the other answers: in short, or because another part has the name. */
function objectionTo(
  session: Session,
  { question, subject }: Item,
  value: Value,
  world: World,
): string | null {
  const { answers } = world.survey(session.kept);
  if (question.id === 'name') {
    const twin = answers.parts.some((part, index) => index !== subject && sameName(part.name, String(value)));
    if (twin) return `There is a part called "${String(value)}" already: type another name.`;
  }
  return question.objection(answers, subject ?? 0, value);
}
