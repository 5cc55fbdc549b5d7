import { describeUnsure } from '../questions/describe-value.ts';
import type { Option, Section, Value } from '../questions/question.ts';
import { SECTION_TITLES } from '../questions/sections.ts';
import type { Because, Settled } from '../rules/asking/because.ts';
import type { Decision } from '../rules/decision.ts';
import { becauseOf, type NeededProgress, neededProgress, notAsked } from './because.ts';
import { USUAL_FILE } from './files.ts';
import { type Input, inputOf } from './input.ts';
import { worthAsking } from './next.ts';
import { type PartLine, partLines } from './part-lines.ts';
import { PART_ACTIONS } from './parts.ts';
import { remarkOn } from './remark.ts';
import { givenWords, type ReviewLine, reviewLines } from './review.ts';
import type { Place, Session, Written } from './session.ts';
import { type Item, isOpen, type Survey } from './survey.ts';
import { type TrialScreen, trialScreen } from './trial-screens.ts';
import { itemAt, samePlace, walkOf } from './walk.ts';
import { unitsOf, type World, wordsIn } from './world.ts';

export interface QuestionScreen {
  readonly kind: 'question';
  readonly id: string;
  readonly section: { readonly id: Section; readonly title: string };
  /** name of the part it is about; null: about the shop */
  readonly part: string | null;
  /** of: null before there is a part, when nobody knows how many questions there will be */
  readonly progress: {
    readonly number: number;
    readonly of: number | null;
    readonly open: number;
    /** where only what is needed is asked */
    readonly needed: NeededProgress | null;
  };
  /** why it is asked now; null where it is asked as it comes */
  readonly because: Because | null;
  readonly title: string;
  readonly ask: string;
  readonly hint: string;
  readonly why: { readonly words: string; readonly readBy: readonly string[] };
  readonly input: Input;
  /** the answer as it stands; `usual`: what is taken where nothing is said; null: none yet */
  readonly current: {
    readonly words: string;
    readonly from: 'typed' | 'usual' | 'not sure';
    /** of the options, those that it names, in its order */
    readonly values: readonly string[];
  } | null;
  readonly notSure: string;
}

export type Screen = (
  | QuestionScreen
  | { readonly kind: 'resume'; readonly parts: readonly string[]; readonly answered: number }
  | { readonly kind: 'parts'; readonly parts: readonly PartLine[]; readonly actions: readonly Option[] }
  | { readonly kind: 'remove'; readonly name: string; readonly answered: number }
  | {
      readonly kind: 'review';
      readonly part: string | null;
      readonly lines: readonly ReviewLine[];
      readonly open: number;
      /** how the result stands without the questions that are not asked; null where all are */
      readonly settled: Settled | null;
    }
  | { readonly kind: 'result'; readonly decision: Decision | null; readonly file: string }
  | { readonly kind: 'file'; readonly what: Written; readonly file: string }
  | { readonly kind: 'overwrite'; readonly what: Written; readonly file: string }
  /** which question comes next is being worked out */
  | { readonly kind: 'next' }
  | TrialScreen
  | { readonly kind: 'done' }
) &
  Feedback;

/** What the last event brought about; the same on every screen. */
interface Feedback {
  /** the answer that was taken, in words and in both systems of units, that of the interview first */
  readonly accepted: { readonly title: string; readonly words: string } | null;
  readonly error: { readonly typed: string; readonly why: string } | null;
  readonly said: string | null;
  /** what is to be read besides what is said */
  readonly more?: readonly string[];
}

/**
 * Everything that a shell shows, as plain data; no shell works out anything of its own. Worked out once for the same
 * session: a shell asks for it several times between two keys.
 */
export function screenOf(session: Session, world: World): Screen {
  const known = screens.get(session);
  if (known?.world === world) return known.screen;
  const survey = world.survey(session.kept);
  const screen: Screen = {
    ...bodyOf(session.at, session, survey, world),
    ...feedbackOf(session, survey, world),
  };
  // a decision is large, and whoever made it decides how long it is kept; what is still worked out is looked at again
  const hangs = screen.kind === 'question' || screen.kind === 'review';
  const isWhole = screen.kind !== 'result' && !(hangs && worthAsking(session, world) === 'later');
  if (isWhole) screens.set(session, { world, screen });
  return screen;
}

const screens = new WeakMap<Session, { readonly world: World; readonly screen: Screen }>();

/** What the last event brought about, without the place that it led to: nothing is decided for it. */
export const feedbackIn = (session: Session, world: World): Feedback =>
  feedbackOf(session, world.survey(session.kept), world);

function bodyOf(at: Place, session: Session, survey: Survey, world: World) {
  const nameOf = (index: number) => survey.answers.parts[index]?.name ?? '';
  switch (at.at) {
    case 'question': {
      const item = itemAt(at, session.kept, world);
      return item === undefined ? ({ kind: 'done' } as const) : questionScreen(item, session, survey, world);
    }
    case 'resume': {
      const answered = survey.items.filter(({ given }) => given !== undefined).length;
      return { kind: at.at, parts: survey.answers.parts.map(({ name }) => name), answered };
    }
    case 'parts':
      return { kind: at.at, parts: partLines(session, survey, world), actions: PART_ACTIONS };
    case 'remove':
      return {
        kind: at.at,
        name: nameOf(at.part),
        answered: Object.keys(session.kept.parts[at.part] ?? {}).length,
      };
    case 'review': {
      const lines = reviewLines(session, at.part, world);
      const part = at.part === null ? null : nameOf(at.part);
      const open = lines.filter(({ state }) => state === 'open').length;
      return { kind: at.at, part, lines, open, settled: notAsked(session, world)?.settled ?? null };
    }
    case 'result':
      return { kind: at.at, decision: world.decision(session.kept), file: USUAL_FILE.report };
    case 'file':
      return { kind: at.at, what: at.what, file: USUAL_FILE[at.what] };
    case 'overwrite':
      return { kind: at.at, what: at.what, file: at.file };
    case 'trial':
    case 'naming':
    case 'variants':
      return trialScreen(at.at, session, world);
    case 'next':
    case 'done':
      return { kind: at.at };
  }
}

function questionScreen(item: Item, session: Session, survey: Survey, world: World): QuestionScreen {
  const { question, subject } = item;
  const questions = walkOf(session.kept, world).filter(({ at }) => at === 'question');
  const units = unitsOf(session.kept);
  const context = wordsIn(session.kept, world);
  const typedName =
    subject === null || session.kept.parts[subject]?.name === undefined
      ? null
      : survey.answers.parts[subject]?.name;
  const part = typedName ?? 'the part';
  return {
    kind: 'question',
    id: question.id,
    section: { id: question.section, title: SECTION_TITLES[question.section] },
    part: subject === null ? null : (survey.answers.parts[subject]?.name ?? null),
    progress: {
      number: questions.findIndex((place) => samePlace(place, session.at)) + 1,
      of: session.kept.parts.length === 0 ? null : questions.length,
      open: survey.items.filter(isOpen).length,
      needed: neededProgress(session, survey, world),
    },
    because: becauseOf(item, session, world),
    title: question.title,
    ask: question.ask({ part, units, currency: world.setting.currency }),
    hint: units === 'inch' ? question.hintInch : question.hint,
    why: { words: question.why, readBy: question.readBy },
    input: inputOf(item, session, world),
    current: currentOf(item, session, world),
    notSure: describeUnsure(question, context),
  };
}

function currentOf({ question, given }: Item, session: Session, world: World): QuestionScreen['current'] {
  const context = wordsIn(session.kept, world);
  if (given !== undefined) {
    const values = given.from === 'not sure' ? [] : valuesOf(given.value);
    return { words: givenWords(question, given, context), from: given.from, values };
  }
  if (question.preset === null) return null;
  return { words: question.preset.words, from: 'usual', values: valuesOf(question.preset.value) };
}

const valuesOf = (value: Value): readonly string[] => {
  if (typeof value === 'boolean') return [value ? 'yes' : 'no'];
  const all = Array.isArray(value) ? value : [value];
  return all.filter((each) => typeof each === 'string');
};

function feedbackOf({ note, kept }: Session, survey: Survey, world: World): Feedback {
  const context = wordsIn(kept, world);
  const none: Feedback = { accepted: null, error: null, said: null };
  if (note === null) return none;
  if (note.kind === 'error') return { ...none, error: { typed: note.typed, why: note.why } };
  if (note.kind === 'said')
    return { ...none, said: note.words, ...(note.lines === undefined ? {} : { more: note.lines }) };
  const item = survey.items.find(
    ({ question, subject }) => question.id === note.id && subject === note.subject,
  );
  if (item === undefined) return none;
  const { question } = item;
  const words = givenWords(question, note.given, { ...context, units: 'inch' });
  const remark = note.given.from === 'not sure' ? null : remarkOn(question, note.given.value, context);
  return {
    ...none,
    said: remark,
    accepted: { title: question.title, words: note.given.from === 'not sure' ? `not sure: ${words}` : words },
  };
}
