import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { type Candidate, onBuiltIn } from '../arranging/candidates.ts';
import type { World } from '../arranging/setting.ts';
import type { RotaryCount } from '../decision.ts';
import type { Judged } from '../weighing/judged.ts';
import { bestFirst, type Found } from './best-first.ts';
import { type Closer, closerBy, type Hopeful } from './closer.ts';
import { byHope, hopesBy } from './hopes.ts';
import { type Bench, judgedInFull } from './judge-one.ts';
import { candidateAt, type Survey, surveyOf } from './survey.ts';
import { type Tables, tablesOf } from './tables.ts';
import { countsOf, type Tally } from './tally.ts';

/** A market as it was judged: those in full that somebody reads of; all of them counted. */
export interface MarketJudged {
  readonly judged: readonly Judged[];
  readonly counts: readonly RotaryCount[];
  /** judged one by one */
  readonly looked: number;
  /** may pass, but are surely behind one that was judged */
  readonly behind: number;
  /** may be better: there were too many to judge them all */
  readonly unseen: number;
}

/** How many of each kind the arguments want to see. */
const OF_A_KIND = 2;

/**
 * Judges a catalog that is too large to judge all of it: the tables drop what fails whatever is added, and of what is left
 * the most hopeful are judged until every other one is surely behind. Who wins, or may, is as by the plain judge on all.
 */
export function judgeMarket(bench: Bench, world: World, catalog: Catalog, answers: Answers): MarketJudged {
  const tally: Tally = new Map();
  const { tables, survey, hopeful, closer } = sieved(bench, world, catalog, answers, tally);
  const found = bestFirst(bench, answers, hopeful, closer, tally);
  const inField = new Map(found.field.map((each) => [each.id, each]));
  return {
    judged: readingOf(found, survey, tables, answers.shop.machine)
      .map((candidate) => inField.get(candidate.id) ?? judgedInFull(bench, candidate))
      .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    counts: countsOf(tally),
    looked: found.looked,
    behind: found.waiting.length - found.unseen,
    unseen: found.unseen,
  };
}

/** What the tables leave of a market. */
export interface Sieved {
  readonly tables: Tables;
  readonly survey: Survey;
  /** the most hopeful first */
  readonly hopeful: readonly Hopeful[];
  readonly closer: (of: Hopeful) => Closer;
}

/** Drops what fails whatever is added; `tally` counts it. */
export function sieved(
  { families, shop }: Pick<Bench, 'families' | 'shop'>,
  world: World,
  catalog: Catalog,
  answers: Answers,
  tally: Tally,
): Sieved {
  const tables = tablesOf(catalog, families, shop);
  const survey = surveyOf(tables, tally);
  const hopesOf = hopesBy(world, tables.bits, answers.shop.machine);
  const hopeful = hopefulFrom(hopesOf, catalog, tables, survey, answers);
  return { tables, survey, hopeful, closer: closerBy(tables, world, hopesOf) };
}

/** The most hopeful first. */
function hopefulFrom(
  hopesOf: ReturnType<typeof hopesBy>,
  catalog: Catalog,
  tables: Tables,
  { survivors }: Survey,
  { matters }: Answers,
): readonly Hopeful[] {
  const nothingFails = new Uint32Array(tables.bits.words);
  return [
    ...survivors.map((pair): Hopeful => {
      const candidate = candidateAt(tables, pair);
      return { candidate, pair, hopes: hopesOf(candidate, pair.fails) };
    }),
    ...catalog.machines.flatMap((row): readonly Hopeful[] => {
      if (row.builtIn === null) return [];
      const candidate = onBuiltIn(row, row.builtIn);
      return [{ candidate, pair: null, hopes: hopesOf(candidate, nothingFails) }];
    }),
  ].sort((a, b) => byHope(matters, a.hopes, b.hopes) || (a.candidate.id < b.candidate.id ? -1 : 1));
}

/**
 * Those that are read of: whom nobody beats; and since the arguments speak of every kind of rotary and of every route, of each
 * kind the most hopeful, or where none may pass those that come nearest.
 */
function readingOf(
  { running, field, failed, waiting }: Found,
  { nearest }: Survey,
  tables: Tables,
  owned: string,
): readonly Candidate[] {
  const reading = new Map<string, Candidate>();
  const read = (candidate: Candidate): void => void reading.set(candidate.id, candidate);
  for (const { id } of field) {
    const known = running.get(id);
    if (known !== undefined) read(known);
  }
  const kindOf = ({ machine, rotary }: Candidate): string =>
    `${rotary.class}/${machine.row.kind}/${machine.key === owned}`;
  const times = new Map<string, number>();
  const ofItsKind = (candidate: Candidate): void => {
    const kind = kindOf(candidate);
    const before = times.get(kind) ?? 0;
    if (before >= OF_A_KIND) return;
    times.set(kind, before + 1);
    read(candidate);
  };
  for (const candidate of running.values()) ofItsKind(candidate);
  for (const { candidate } of waiting) ofItsKind(candidate);
  for (const each of failed) running.size === 0 ? read(each) : ofItsKind(each);
  for (const some of nearest.values())
    for (const each of some) {
      const candidate = candidateAt(tables, each);
      running.size === 0 ? read(candidate) : ofItsKind(candidate);
    }
  return [...reading.values()];
}
