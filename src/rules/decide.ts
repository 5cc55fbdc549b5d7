import type { Catalog } from '../catalog/catalog.ts';
import { MATERIALS } from '../mechanics/forces/materials.ts';
import type { Answers } from '../questions/answers.ts';
import { NOT_SURE } from '../questions/ranges.ts';
import type { Decision, Drop, RankStep, RunnerUp } from './decision.ts';
import { flipsOf } from './flips/flips-of.ts';
import { singleLimits } from './flips/single-limits.ts';
import { bounded } from './judging/value.ts';
import { MONEY_FORMULAS } from './money/formulas.ts';
import { stabilityOf } from './stability/stability-of.ts';
import { byRotary } from './stages/by-rotary.ts';
import { countOf, stageCounts } from './stages/counts.ts';
import { dropOf } from './stages/drop.ts';
import { standingOf } from './standing.ts';
import { argue, namedIn } from './weighing/argue.ts';
import { assembled } from './weighing/assemble.ts';
import { cautionsFor } from './weighing/cautions-for.ts';
import { envelopeOf } from './weighing/envelope.ts';
import { featuresOf } from './weighing/features.ts';
import type { Judged } from './weighing/judged.ts';
import { nearestMisses } from './weighing/nearest-misses.ts';
import { inOrder, type Ranking, rankBy } from './weighing/rank.ts';
import { type Ranked, scoreOn } from './weighing/scores.ts';
import { unknownsOf } from './weighing/unknowns.ts';

export interface DecideOptions {
  /** list every arrangement, not only the ones worth reading */
  readonly all?: boolean;
  /** list these besides, by their ids */
  readonly also?: readonly string[];
  readonly shownIn?: 'mm' | 'inch';
  /** false: no traces of checks, for a quick look at what is left */
  readonly traces?: boolean;
  /**
   * the one number that would have let it through, of these and, where the outcome is not open, of each of the nearest
   * misses; left out: of none
   */
  readonly flips?: readonly string[];
  /** how far each answer may move while the recommendation stays: takes longer than all the rest */
  readonly ranges?: boolean;
}

const MOST_RUNNERS_UP = 5;

/**
 * The door: answers and catalog in, the whole decision out. Pure and synchronous; it never throws on
 * answers and catalogs that their readers let through.
 */
export function decide(answers: Answers, catalog: Catalog, options: DecideOptions = {}): Decision {
  const standing = standingOf(answers, catalog);
  const { shop, world, fiveAxis, threeAxis, judged, running, field, ranking, outcome, market } = standing;
  const undominated = new Set(field.map(({ id }) => id));
  // where nothing asks for five axes, nothing was missed
  const misses = fiveAxis.length === 0 ? [] : nearestMisses(judged, shop.assume.leastCoverage);
  const drops = new Map(judged.map((each) => [each.id, dropOf(each, shop.assume.leastCoverage)]));
  const dropped = ({ id }: Judged): Drop | null => drops.get(id) ?? null;
  const order = runnersInOrder(answers, shop.assume.band, running, ranking.winner);
  const winner = judged.find(({ id }) => id === ranking.winner) ?? null;
  const argued = argue({ answers, shop, families: fiveAxis, judged, tables: standing.tables, winner });
  const worthReading = new Set([
    ...undominated,
    ...ranking.contenders,
    ...order,
    ...misses.map(({ id }) => id),
    ...namedIn(argued),
    ...(options.also ?? []),
  ]);
  const listed = options.all === true ? judged : judged.filter(({ id }) => worthReading.has(id));
  const contenders = new Set(ranking.contenders);
  const flipped = new Set(
    options.flips === undefined
      ? []
      : [...(outcome === 'open' ? [] : misses.map(({ id }) => id)), ...options.flips],
  );
  const reading = judged.filter(({ id }) => contenders.has(id));
  const counts =
    market?.counts ??
    byRotary(judged.map((each) => ({ rotary: each.setUp.candidate.rotary.key, drop: dropped(each) })));
  return {
    format: 'fivesides-decision/1',
    inputs: {
      answers,
      catalog,
      assume: shop.assume,
      materials: MATERIALS,
      shownIn: options.shownIn ?? 'mm',
      notSure: NOT_SURE_SHOWN,
    },
    outcome,
    recommended: ranking.winner,
    contenders: ranking.contenders,
    arrangements: listed.map((each) =>
      assembled(
        each,
        {
          undominated: undominated.has(each.id),
          dropped: dropped(each),
          flips: flipped.has(each.id) ? flipsOf(each, { answers, catalog }) : [],
        },
        answers,
        world,
        options.traces !== false,
      ),
    ),
    count: countOf(counts),
    market: market === null ? null : { looked: market.looked, behind: market.behind, unseen: market.unseen },
    stages: stageCounts(counts),
    byRotary: counts,
    envelope: envelopeOf(fiveAxis, catalog, shop.assume.kneeShare),
    hours: Object.fromEntries([...fiveAxis, ...threeAxis].map(({ name, hours }) => [name, bounded(hours)])),
    threeAxis: threeAxis.map(({ name }) => name),
    ranking: ranking.steps.map(shownStep),
    runnersUp:
      winner === null
        ? []
        : order.map((id) =>
            runnerUp(byId(running, winner.id), byId(running, id), ranking, answers, shop.assume.band),
          ),
    nearestMisses: misses.map(({ id }) => id),
    singleLimits: outcome === 'none' ? singleLimits(judged, shop.assume.leastCoverage) : [],
    ...argued,
    features: winner === null ? [] : featuresOf(winner, answers, shop),
    stability: options.ranges === true && market === null ? stabilityOf(standing, { answers, catalog }) : [],
    unknowns: unknownsOf(
      reading.length > 0 ? reading : misses,
      contenders,
      outcome === 'open',
      world,
      answers.matters,
    ),
    cautions: cautionsFor(reading.length > 0 ? reading : misses, answers),
    moneyFormulas: MONEY_FORMULAS,
  };
}

const NOT_SURE_SHOWN = Object.fromEntries(
  Object.entries(NOT_SURE).map(([key, { low, high }]) => [
    key,
    [low, Number.isFinite(high) ? high : null] as const,
  ]),
);

/** The next best after the winner, best first. */
function runnersInOrder(
  answers: Answers,
  band: number,
  running: readonly Ranked[],
  winner: string | null,
): readonly string[] {
  if (winner === null) return [];
  const others = running.filter(({ id, surely }) => surely && id !== winner);
  return inOrder(answers.matters, band, others, MOST_RUNNERS_UP);
}

function byId(running: readonly Ranked[], id: string): Ranked {
  const found = running.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no arrangement ${id}`);
  return found;
}

const shownStep = ({ measure, best, stays, drops }: Ranking['steps'][number]): RankStep => ({
  measure,
  best: bounded(best),
  stays: stays.map(({ id }) => id),
  drops: drops.map(({ id }) => id),
});

/** Where a runner-up fell behind, and what the winner gives up against it. */
function runnerUp(
  winner: Ranked,
  other: Ranked,
  { steps }: Ranking,
  { matters: order }: Answers,
  band: number,
): RunnerUp {
  const drop = (taken: Ranking['steps']) =>
    taken.find(({ drops }) => drops.some(({ id }) => id === other.id));
  // one that another beats on every measure was never ranked: it is held against the winner alone
  const lost = drop(steps) ?? drop(rankBy(order, band, [winner, other]).steps);
  const gives = order.flatMap((measure) => {
    const [mine, its] = [winner.measures[measure], other.measures[measure]];
    if (its === null || scoreOn(measure, its).low <= scoreOn(measure, mine).high) return [];
    return [{ measure, winner: mine === null ? null : bounded(mine), other: bounded(its) }];
  });
  return { id: other.id, lostOn: lost?.measure ?? null, gives };
}
