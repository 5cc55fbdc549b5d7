import type { Catalog } from '../catalog/catalog.ts';
import type { Answers } from '../questions/answers.ts';
import { type Candidate, candidatesOf } from './arranging/candidates.ts';
import { type Family, familiesOf } from './arranging/family.ts';
import { keptSetUp } from './arranging/kept-set-up.ts';
import type { World } from './arranging/setting.ts';
import { setUpBest } from './arranging/setting-search.ts';
import { isMarket } from './fast/is-market.ts';
import { judgeMarket, type MarketJudged } from './fast/judge-market.ts';
import { judgedInFull, marketBench } from './fast/judge-one.ts';
import { candidatesNamed, tablesOfAll } from './fast/named.ts';
import { provenWith } from './fast/proven-with.ts';
import { type Sample, sampleOf } from './fast/sample.ts';
import type { RotaryCase, ShopCase } from './judging/case.ts';
import { atHand } from './kept-work.ts';
import { unbeaten } from './weighing/dominance.ts';
import { failsAsSetUp, type Judged, judgeSetUp } from './weighing/judged.ts';
import { type Ranking, rankBy } from './weighing/rank.ts';
import { rankedOf } from './weighing/ranked-of.ts';
import type { Ranked } from './weighing/scores.ts';
import { surelyFails } from './weighing/surely-fails.ts';

/** The bones of a decision: every arrangement judged, those that may pass ranked; nothing is written down. */
export interface Standing {
  readonly shop: ShopCase;
  readonly world: World;
  readonly fiveAxis: readonly Family[];
  readonly threeAxis: readonly Family[];
  /** by their ids */
  readonly judged: readonly Judged[];
  /** those that pass, or may */
  readonly running: readonly Ranked[];
  /** of these the ones that no other beats on every measure */
  readonly field: readonly Ranked[];
  readonly ranking: Ranking;
  readonly outcome: 'recommended' | 'none' | 'open';
  /** every rotary and built-in table that some arrangement has, each once */
  readonly tables: readonly RotaryCase[];
  /** what became of those of a large catalog that are not among `judged`; null: all are */
  readonly market: Omit<MarketJudged, 'judged'> | null;
}

/** Whether both have the same outcome, and the same arrangements may win. */
export const isSameResult = (a: Standing, b: Standing): boolean =>
  a.outcome === b.outcome && a.ranking.contenders.join() === b.ranking.contenders.join();

/** How arrangements stand on these answers, each of them judged. */
export function standingOf(answers: Answers, catalog: Catalog): Standing {
  if (isMarket(catalog)) return marketStanding(answers, catalog);
  return standing(answers, catalog, (world, families, owned) =>
    candidatesIn(catalog).map((candidate) => judgeSetUp(world, setUpBest(world, candidate, families), owned)),
  );
}

/**
 * The same in a hurry: what surely fails is not judged to the end and is left out, and the cases of outcomes may be those
 * of earlier answers, good for everything but reasons. `among`: only these are looked at, by their ids. That is sound
 * where every other one surely fails: on the same answers with more of them unknown it did so for every value. What was
 * worked out for the same catalog is used again as far as nothing that it read has changed; the result never hangs on
 * that.
 */
export function runningOf(answers: Answers, catalog: Catalog, among?: ReadonlySet<string>): Standing {
  if (isMarket(catalog)) return marketStanding(answers, catalog, among);
  return standing(answers, catalog, (world, families, owned) =>
    candidatesIn(catalog).flatMap((candidate): readonly Judged[] => {
      if (among?.has(candidate.id) === false || surelyFails(world, candidate, families)) return [];
      const setUp = keptSetUp(world, candidate, families);
      return failsAsSetUp(world, setUp) ? [] : [judgeSetUp(world, setUp, owned)];
    }),
  );
}

function standing(
  answers: Answers,
  catalog: Catalog,
  judge: (
    world: World,
    families: readonly Family[],
    owned: string,
  ) => readonly Judged[] | { readonly judged: readonly Judged[]; readonly market: Standing['market'] },
): Standing {
  const { shop, world, casesOf } = atHand(answers, catalog);
  const { fiveAxis, threeAxis } = familiesOf(answers.parts, shop, casesOf);
  const made = judge(world, fiveAxis, answers.shop.machine);
  const { judged: unsorted, market } = 'judged' in made ? made : { judged: made, market: null };
  const judged = unsorted.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const running = judged.filter(({ passes }) => passes !== 'no').map((each) => rankedOf(each, shop));
  const field = unbeaten(running);
  const unseen = market?.unseen ?? 0;
  const ranking = provenWith(unseen, rankBy(answers.matters, shop.assume.band, field));
  const outcome = outcomeOf(ranking, running.length + unseen > 0);
  const tables = market === null ? tablesIn(judged) : tablesOfAll(catalog);
  return { shop, world, fiveAxis, threeAxis, judged, running, field, ranking, outcome, tables, market };
}

const outcomeOf = ({ winner }: Ranking, mayAnyPass: boolean): Standing['outcome'] =>
  winner !== null ? 'recommended' : mayAnyPass ? 'open' : 'none';

/** The same of a catalog too large to judge all of it; `among`: only these. */
function marketStanding(answers: Answers, catalog: Catalog, among?: ReadonlySet<string>): Standing {
  return standing(answers, catalog, (world, families, owned) => {
    const bench = marketBench(world, families, owned);
    if (among !== undefined) {
      const judged = candidatesNamed(catalog, among).map((each) => judgedInFull(bench, each));
      return { judged: judged.filter(({ passes }) => passes !== 'no'), market: NOBODY_ELSE };
    }
    const { judged, ...market } = judgeMarket(bench, world, catalog, answers);
    return { judged, market };
  });
}

/**
 * How a few of a large catalog stand, enough to see what is worth asking: while others were not looked at nothing is
 * proven. Null where the catalog is not a large one, or where these are all that are not ruled out.
 */
export function standingOfFew(answers: Answers, catalog: Catalog): (Standing & Pick<Sample, 'of'>) | null {
  if (!isMarket(catalog)) return null;
  let of = 0;
  const few = standing(answers, catalog, (world, families, owned) => {
    const sample = sampleOf(marketBench(world, families, owned), world, catalog, answers);
    of = sample.of;
    const { judged } = sample;
    return { judged, market: { ...NOBODY_ELSE, looked: judged.length, unseen: of - judged.length } };
  });
  return of > few.judged.length ? { ...few, of } : null;
}

const NOBODY_ELSE = { counts: [], looked: 0, behind: 0, unseen: 0 };

const tablesIn = (judged: readonly Judged[]): readonly RotaryCase[] => [
  ...new Map(judged.map(({ setUp: { candidate } }) => [candidate.rotary.key, candidate.rotary])).values(),
];

const candidates = new WeakMap<Catalog, readonly Candidate[]>();

function candidatesIn(catalog: Catalog): readonly Candidate[] {
  const known = candidates.get(catalog) ?? candidatesOf(catalog);
  candidates.set(catalog, known);
  return known;
}

/** One arrangement judged to the end, by its id; null: the catalog has none such. */
export function judgedAlone(answers: Answers, catalog: Catalog, id: string): Judged | null {
  const candidate = candidatesIn(catalog).find((each) => each.id === id);
  if (candidate === undefined) return null;
  const { shop, world, casesOf } = atHand(answers, catalog);
  const { fiveAxis } = familiesOf(answers.parts, shop, casesOf);
  return judgeSetUp(world, setUpBest(world, candidate, fiveAxis), answers.shop.machine);
}
