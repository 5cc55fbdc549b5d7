import type { DescribeContext } from '../questions/describe-value.ts';
import { givenAt, isBegun, type Kept } from './kept.ts';
import { givenWords } from './review.ts';
import type { Session } from './session.ts';
import type { Item } from './survey.ts';
import { type World, wordsIn } from './world.ts';

/** As it was before each change, the newest last: what can be taken back. Kept for one run of the interview. */
export type Past = readonly Session[];

/** More changes than anybody takes back; so many sessions are kept. */
export const MOST_UNDONE = 500;

/** The past once a session has become another one: longer by one where an answer, what is tried or a variant changed. */
export function remembered(past: Past, before: Session, after: Session): Past {
  if (before.kept === after.kept && before.trial === after.trial && before.variants === after.variants)
    return past;
  if (stateOf(before) === stateOf(after)) return past;
  // with answers of its own: what was worked out for those that were shown is not kept for their sake
  return [...past, { ...before, note: null, kept: { ...before.kept } }].slice(-MOST_UNDONE);
}

/** A part that was begun and has no answer yet is no change. */
const stateOf = ({ kept, trial, variants }: Session): string =>
  JSON.stringify([{ ...kept, parts: kept.parts.filter(isBegun) }, trial === null, variants]);

interface Undone {
  readonly past: Past;
  /** where the change was made, before it was */
  readonly session: Session;
  /** a sentence on what is as it was */
  readonly words: string;
}

/** Takes back the last change; null where there is none. */
export function undo(past: Past, now: Session, world: World): Undone | null {
  const session = past.at(-1);
  if (session === undefined) return null;
  return { past: past.slice(0, -1), session, words: undoneWords(session, now, world) };
}

export const NOTHING_TO_UNDO = 'There is nothing to take back.';

/** Example: 'Budget is 172 000 EUR again, it was 150 000 EUR.' */
function undoneWords(then: Session, now: Session, world: World): string {
  const parts = partWords(then.kept, now.kept, world);
  // of a part that comes or goes its answers are not told one by one
  const answers = parts.length === 0 ? answerWords(then.kept, now.kept, world) : [];
  const words = [...parts, ...answers, ...besideWords(then, now)];
  const shown = words.slice(0, MOST_SAID);
  const more = words.length - shown.length;
  if (shown.length === 0) return 'The last change is taken back.';
  return `${shown.join(' ')}${more === 0 ? '' : ` ${more} more ${more === 1 ? 'answer is' : 'answers are'} as before.`}`;
}

const MOST_SAID = 3;
const MOST_NAMED = 3;

function partWords(then: Kept, now: Kept, world: World): readonly string[] {
  const [before, after] = [namesIn(then, world), namesIn(now, world)];
  if (before.length === after.length) return [];
  const out = after.filter((name) => !before.includes(name));
  const back = before.filter((name) => !after.includes(name));
  return [
    ...(out.length === 0 ? [] : [`${listed(out)} ${out.length === 1 ? 'is' : 'are'} taken out again.`]),
    ...(back.length === 0 ? [] : [`${listed(back)} ${back.length === 1 ? 'is' : 'are'} there again.`]),
  ];
}

const namesIn = (kept: Kept, world: World): readonly string[] =>
  world.survey(kept).answers.parts.flatMap(({ name }, part) => (isBegun(kept.parts[part]) ? [name] : []));

function listed(names: readonly string[]): string {
  const more = names.length - MOST_NAMED;
  if (more > 0) return `${names.slice(0, MOST_NAMED).join(', ')} and ${more} more`;
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** Answers that are other ones, each in a sentence. */
function answerWords(then: Kept, now: Kept, world: World): readonly string[] {
  const context = wordsIn(then, world);
  const { items, answers } = world.survey(then);
  return items.flatMap((item) => {
    const { question, subject } = item;
    const [before, after] = [givenAt(then, subject, question.id), givenAt(now, subject, question.id)];
    if (JSON.stringify(before) === JSON.stringify(after)) return [];
    // a part that has only now its first answer has no name that could be told
    const hasName = subject !== null && question.id !== 'name' && isBegun(then.parts[subject]);
    const part = hasName ? `${answers.parts[subject]?.name}: ` : '';
    const [is, was] = [answerIn(item, before, context), answerIn(item, after, context)];
    return [`${part}${question.title} is ${is} again, it was ${was}.`];
  });
}

const answerIn = ({ question }: Item, given: ReturnType<typeof givenAt>, context: DescribeContext): string =>
  given === undefined
    ? 'open'
    : given.from === 'not sure'
      ? 'not sure'
      : given.from === 'usual'
        ? `the usual (${givenWords(question, given, context)})`
        : givenWords(question, given, context);

function besideWords(then: Session, now: Session): readonly string[] {
  const tried =
    (then.trial === null) === (now.trial === null)
      ? []
      : [then.trial === null ? 'Nothing is tried any more.' : 'Other answers are tried again.'];
  const same = JSON.stringify(then.variants) === JSON.stringify(now.variants);
  return [...tried, ...(same ? [] : ['The variants are as they were before.'])];
}
