import type { Catalog } from '../catalog/catalog.ts';
import type { Answers, Part } from '../questions/answers.ts';
import { type Candidate, candidatesOf } from './arranging/candidates.ts';
import { type Family, familiesOf } from './arranging/family.ts';
import type { World } from './arranging/setting.ts';
import { partCases } from './facts/part-facts.ts';
import { shopCase } from './facts/shop-facts.ts';
import type { PartCase, ShopCase } from './judging/case.ts';
import { SHOP_SIDES } from './judging/judge-family.ts';
import { forgetShop, freshMemo, type Memo } from './judging/memo.ts';
import { unbeaten } from './weighing/dominance.ts';
import { type Judged, judgeCandidate } from './weighing/judged.ts';
import { type Ranking, rankBy } from './weighing/rank.ts';
import { rankedOf } from './weighing/ranked-of.ts';
import type { Ranked } from './weighing/scores.ts';

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
}

/**
 * How arrangements stand on these answers. `among`: only these are judged, by their ids. That is sound where every
 * other one surely fails: on the same answers with more of them unknown it did so for every value. What was worked out
 * for the same catalog is used again as far as the same answers went into it; the result never hangs on that.
 */
export function standingOf(answers: Answers, catalog: Catalog, among?: ReadonlySet<string>): Standing {
  const { shop, world, casesOf } = keptFor(answers, catalog);
  const { fiveAxis, threeAxis } = familiesOf(answers.parts, shop, casesOf);
  const judged = candidatesIn(catalog)
    .filter(({ id }) => among?.has(id) ?? true)
    .map((candidate) => judgeCandidate(world, candidate, fiveAxis, answers.shop.machine))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const running = judged.filter(({ passes }) => passes !== 'no').map((each) => rankedOf(each, shop));
  const field = unbeaten(running);
  const ranking = rankBy(answers.matters, shop.assume.band, field);
  const outcome = running.length === 0 ? 'none' : ranking.winner === null ? 'open' : 'recommended';
  return { shop, world, fiveAxis, threeAxis, judged, running, field, ranking, outcome };
}

const candidates = new WeakMap<Catalog, readonly Candidate[]>();

function candidatesIn(catalog: Catalog): readonly Candidate[] {
  const known = candidates.get(catalog) ?? candidatesOf(catalog);
  candidates.set(catalog, known);
  return known;
}

/** What stays worked out between two decisions on one catalog. */
interface Kept {
  /** what went into it: tools, loading and assumptions, which any check may read */
  readonly base: string;
  readonly memo: Memo;
  /** what went into what the checks of the shop found */
  site: string;
  /** the kinds of a part, by all that was answered about it but its year */
  readonly parts: Map<string, readonly PartCase[]>;
}

interface AtHand {
  readonly shop: ShopCase;
  readonly world: World;
  readonly casesOf: (part: Part) => readonly PartCase[];
}

/** The last base of each catalog: another one begins anew. */
const kept = new WeakMap<Catalog, Kept>();

/** More parts than these, counting each change of an answer, and the oldest work only takes room. */
const MOST_PARTS = 400;

function keptFor(answers: Answers, catalog: Catalog): AtHand {
  const { parts: _parts, matters: _matters, ...rest } = answers;
  const { assume, tools, work } = rest;
  const base = JSON.stringify([assume, tools, work.loading]);
  const site = JSON.stringify(rest);
  const before = kept.get(catalog);
  const now: Kept =
    before !== undefined && before.base === base && before.parts.size <= MOST_PARTS
      ? before
      : { base, memo: freshMemo(SHOP_SIDES), site, parts: new Map() };
  if (now.site !== site) forgetShop(now.memo);
  now.site = site;
  // these hang on the cases of one decision
  now.memo.oriented.clear();
  kept.set(catalog, now);
  const shop = shopCase(answers);
  return { shop, world: { shop, memo: now.memo }, casesOf: (part) => casesIn(now, part, shop) };
}

/** The same cases for the same answers, under names that no other answers have. */
function casesIn({ parts }: Kept, part: Part, shop: ShopCase): readonly PartCase[] {
  const { yearly: _yearly, must: _must, ...judgedOn } = part;
  const content = JSON.stringify(judgedOn);
  const known = parts.get(content);
  if (known !== undefined) return known;
  const made = partCases(part, shop).map((each) => ({ ...each, key: `${parts.size}/${each.key}` }));
  parts.set(content, made);
  return made;
}
