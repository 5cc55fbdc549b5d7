import type { Catalog } from '../../../src/catalog/catalog.ts';
import type { Answers } from '../../../src/questions/answers.ts';
import { standsOn } from '../../../src/rules/arranging/candidates.ts';
import { familiesOf } from '../../../src/rules/arranging/family.ts';
import { CHECKS } from '../../../src/rules/checks/index.ts';
import { judgeMarket } from '../../../src/rules/fast/judge-market.ts';
import { marketBench } from '../../../src/rules/fast/judge-one.ts';
import { sieveOf } from '../../../src/rules/fast/sieve.ts';
import { type Tables, tablesOf } from '../../../src/rules/fast/tables.ts';
import type { Check } from '../../../src/rules/judging/check.ts';
import { atHand } from '../../../src/rules/kept-work.ts';
import { type Standing, standingOf } from '../../../src/rules/standing.ts';
import { unbeaten } from '../../../src/rules/weighing/dominance.ts';
import { rankBy } from '../../../src/rules/weighing/rank.ts';
import { rankedOf } from '../../../src/rules/weighing/ranked-of.ts';
import { plainly } from './plain-judge.ts';
import { isLookedAt, threeOn } from './three-on.ts';

interface Shop {
  readonly answers: Answers;
  readonly catalog: Catalog;
}

/** Of a shop: its tables, made of these checks instead of all. */
function tablesFor({ answers, catalog }: Shop, checks: readonly Check[] = CHECKS) {
  const { shop, casesOf } = atHand(answers, catalog);
  const { fiveAxis } = familiesOf(answers.parts, shop, casesOf);
  return { families: fiveAxis, tables: tablesOf(catalog, fiveAxis, shop, checks) };
}

const pairsOf = ({ machines, stands }: Tables): readonly (readonly [machine: number, stand: number])[] =>
  machines.flatMap((machine, at) =>
    stands.flatMap((stand, under) => (standsOn(stand, machine) ? [[at, under] as const] : [])),
  );

/** How often each verdict was held against the other judge, and where the two differ. */
export interface Held {
  readonly counts: Record<string, Partial<Record<string, number>>>;
  readonly differ: string[];
}

/**
 * Holds what the tables say of every check, pair and family against the plain judge, in three values. `every`: one
 * pair of so many; `turned`: the tables are made of these checks, and the plain judge of the right ones.
 */
export function verdictsHeld(market: Shop, held: Held, every = 1, turned: readonly Check[] = CHECKS): void {
  const { families, tables } = tablesFor(market, turned);
  pairsOf(tables).forEach(([machine, stand], at) => {
    if (at % every !== 0) return;
    CHECKS.forEach((check, index) => {
      const own = turned[index] as Check;
      if (!isLookedAt(tables, stand, own)) return;
      const pair = tables.pairs.find((each) => each.check === own);
      const whole = pair?.whole ?? true;
      const about = check.about === 'part' ? families : [null];
      about.forEach((family, number) => {
        const fast = threeOn(tables, machine, stand, own, number);
        if (fast === null && whole) return;
        const plain = plainly(tables, machine, stand, check, family);
        const counts = held.counts[check.id] ?? {};
        held.counts[check.id] = counts;
        counts[plain] = (counts[plain] ?? 0) + 1;
        const same = whole ? fast === plain : (fast === 'fails') === (plain === 'fails');
        if (!same) held.differ.push(`${check.id} ${family?.name ?? ''}: ${fast}, not ${plain}`);
      });
    });
  });
}

/** Where the result of the market way is another than that of judging every arrangement; nothing: the same. */
export function resultsDiffer(
  { answers, catalog }: Shop,
  plain: Standing = standingOf(answers, catalog),
): readonly string[] {
  const { shop, world, casesOf } = atHand(answers, catalog);
  const { fiveAxis } = familiesOf(answers.parts, shop, casesOf);
  const bench = marketBench(world, fiveAxis, answers.shop.machine);
  const fast = judgeMarket(bench, world, catalog, answers);
  const running = fast.judged.filter(({ passes }) => passes !== 'no').map((each) => rankedOf(each, shop));
  const ranking = rankBy(answers.matters, shop.assume.band, unbeaten(running));
  const count = fast.counts.reduce((sum, each) => sum + each.count, 0);
  const left = fast.counts.reduce((sum, each) => sum + each.left, 0);
  const unlike = (name: string, a: unknown, b: unknown): readonly string[] =>
    String(a) === String(b) ? [] : [`${name}: ${a}, not ${b}`];
  return [
    ...unlike('winner', ranking.winner, plain.ranking.winner),
    ...unlike('contenders', ranking.contenders, plain.ranking.contenders),
    ...unlike('none left', running.length === 0, plain.running.length === 0),
    ...unlike('arrangements', count, plain.judged.length),
    // those that are behind were not judged, so that some of them may fail after all
    ...(left < plain.running.length ? [`${left} left, of ${plain.running.length}`] : []),
    ...droppedWrongly({ answers, catalog }, new Set(plain.running.map(({ id }) => id))),
  ];
}

/** Arrangements that the tables drop though they pass, or may. */
function droppedWrongly(market: Shop, running: ReadonlySet<string>): readonly string[] {
  const { tables } = tablesFor(market);
  const sieve = sieveOf(tables);
  return pairsOf(tables).flatMap(([machine, stand]) => {
    const { drop } = sieve.on(machine, stand);
    const under = tables.stands[stand];
    const id = `${tables.machines[machine]?.key}+${under?.rotary.key}/${under?.mounting}`;
    return drop !== null && running.has(id) ? [`${id} dropped by ${drop.id}`] : [];
  });
}
