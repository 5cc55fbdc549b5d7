import { isUsable } from './base.ts';
import type { Base, Given, GivenAnswers, Kept } from './kept.ts';
import type { Asks, Place, Session, Variant } from './session.ts';
import { withoutTrial } from './trial.ts';
import { MOST_VARIANTS } from './variants.ts';

const SESSION_FORMAT = 'fivesides-session/1';

/** An interview as it is kept in a file. */
export interface Saved {
  readonly format: typeof SESSION_FORMAT;
  /** folders of the catalog; none: the demo catalog */
  readonly catalogs: readonly string[];
  /** where the interview stood */
  readonly position: Place;
  /** every answer, by the id of its question; units are one of them */
  readonly answers: Kept;
  /** a file that does not say asks what is needed */
  readonly asks: Asks;
  /** what is tried, and of which variant that is a look; left out: nothing is tried */
  readonly trial?: { readonly kept: Kept; readonly of: string | null };
  /** left out: there is none */
  readonly variants?: readonly Variant[];
}

/** From one format to the next. A file of an old format goes through all that follow. */
export interface Migration {
  readonly from: string;
  readonly to: string;
  readonly migrate: (data: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
}

/** There is only one format yet. */
const MIGRATIONS: readonly Migration[] = [];

export type SavedReading =
  | { readonly ok: true; readonly saved: Saved }
  /** one clause on what is wrong with the file */
  | { readonly ok: false; readonly why: string };

/** The session as it is saved: everything that was answered, and where it stood. */
export function savedOf(session: Session): Saved {
  const { kept, at, detours } = withoutTrial(session);
  const { catalogs, trial, variants, asks } = session;
  return {
    format: SESSION_FORMAT,
    catalogs,
    position: detours[0]?.from ?? at,
    asks,
    answers: kept,
    ...(trial === null ? {} : { trial: { kept: session.kept, of: trial.of } }),
    ...(variants.length === 0 ? {} : { variants }),
  };
}

/**
 * Reads a saved interview, whatever the file holds: an older format is brought up, an unknown one refused by its
 * name. Answers to questions that are not asked any more are kept as they are.
 */
export function readSaved(text: string, migrations: readonly Migration[] = MIGRATIONS): SavedReading {
  let data: unknown;
  let isBeyond = false;
  try {
    data = JSON.parse(text, (_, value: unknown) => {
      isBeyond ||= typeof value === 'number' && !Number.isFinite(value);
      return value;
    });
  } catch {
    return no('it is no JSON');
  }
  // saved once more it would be no number
  if (isBeyond) return no('it holds a number that is too large to be one');
  if (!isRecord(data)) return no('it holds no interview');
  const { format } = data;
  if (typeof format !== 'string') return no('it names no format');
  const current = migrated(data, migrations);
  if (current.format !== SESSION_FORMAT) {
    return no(`its format is "${format.slice(0, 60)}", and this version reads ${SESSION_FORMAT}`);
  }
  const { catalogs, position, answers, asks } = current;
  if (!Array.isArray(catalogs) || !catalogs.every((folder) => typeof folder === 'string')) {
    return no('its "catalogs" are no list of folders');
  }
  const kept = keptIn(answers);
  if (!kept.ok) return kept;
  const more = triedIn(current);
  if (more === null) return no('what was tried in it is damaged');
  const saved: Saved = {
    format: SESSION_FORMAT,
    catalogs,
    position: positionOf(position),
    asks: asks === 'all' ? 'all' : 'needed',
    answers: kept.kept,
    ...more,
  };
  return { ok: true, saved };
}

type KeptReading = { readonly ok: true; readonly kept: Kept } | { readonly ok: false; readonly why: string };

function keptIn(answers: unknown): KeptReading {
  if (!isRecord(answers) || !isGivenAnswers(answers.shop) || !Array.isArray(answers.parts)) {
    return no('its "answers" are damaged');
  }
  const parts: unknown[] = answers.parts;
  if (!parts.every(isGivenAnswers)) return no('its "answers" are damaged');
  const based = baseOf(answers.base, parts.length);
  if (based === null) return no('the answers file that it goes on from is damaged');
  return { ok: true, kept: { shop: answers.shop, parts, ...based } };
}

/** What is tried, and the variants; nothing in a file from before there were any; null where they are damaged. */
function triedIn({
  trial,
  variants,
}: Readonly<Record<string, unknown>>): Pick<Saved, 'trial' | 'variants'> | null {
  const tried = trial === undefined ? undefined : keptIn(isRecord(trial) ? trial.kept : null);
  const list: readonly unknown[] | null =
    variants === undefined
      ? []
      : Array.isArray(variants) && variants.length <= MOST_VARIANTS
        ? variants
        : null;
  if (tried?.ok === false || list === null) return null;
  const read: Variant[] = [];
  for (const each of list) {
    const kept = keptIn(isRecord(each) ? each.kept : null);
    if (!isRecord(each) || typeof each.name !== 'string' || !kept.ok) return null;
    read.push({ name: each.name, kept: kept.kept });
  }
  const of = isRecord(trial) && typeof trial.of === 'string' ? trial.of : null;
  return {
    ...(tried === undefined ? {} : { trial: { kept: tried.kept, of } }),
    ...(variants === undefined ? {} : { variants: read }),
  };
}

/** Nothing where it goes on from no file; null where what it holds is none. */
function baseOf(base: unknown, parts: number): Pick<Kept, 'base'> | null {
  if (base === undefined) return {};
  if (!isRecord(base) || typeof base.text !== 'string' || !Array.isArray(base.parts)) return null;
  const of: unknown[] = base.parts;
  const isPlace = (each: unknown): each is number | null =>
    each === null || (typeof each === 'number' && Number.isInteger(each) && each >= 0);
  if (of.length !== parts || !of.every(isPlace)) return null;
  const read: Base = { text: base.text, parts: of };
  return isUsable(read) ? { base: read } : null;
}

/** Brought up format by format, as far as there is a way. */
function migrated(
  data: Readonly<Record<string, unknown>>,
  migrations: readonly Migration[],
): Readonly<Record<string, unknown>> {
  let current = data;
  for (const { from, to, migrate } of migrations) {
    if (current.format === from) current = { ...migrate(current), format: to };
  }
  return current;
}

const no = (why: string): { readonly ok: false; readonly why: string } => ({ ok: false, why });

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isGivenAnswers = (value: unknown): value is GivenAnswers =>
  isRecord(value) && Object.values(value).every(isGiven);

/** Whether the value fits its question is looked at where it is used. */
const isGiven = (value: unknown): value is Given =>
  isRecord(value) &&
  (value.from === 'not sure' ||
    ((value.from === 'typed' || value.from === 'usual') && value.value !== undefined));

/** Only places on the way through the interview are resumed at. */
function positionOf(position: unknown): Place {
  if (isRecord(position) && position.at === 'question' && typeof position.id === 'string') {
    const { id, subject } = position;
    if (subject === null || (typeof subject === 'number' && Number.isInteger(subject))) {
      return { at: 'question', id, subject };
    }
  }
  return isRecord(position) && position.at === 'parts' ? { at: 'parts' } : { at: 'review', part: null };
}
