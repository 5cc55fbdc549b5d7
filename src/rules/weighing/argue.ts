import type { Answers } from '../../questions/answers.ts';
import type { Family } from '../arranging/family.ts';
import type { BestOf } from '../classes/best-of.ts';
import { classFindings } from '../classes/class-findings.ts';
import { groundFor } from '../classes/ground.ts';
import { routeFindings } from '../classes/route-findings.ts';
import type { Decision } from '../decision.ts';
import type { RotaryCase, ShopCase } from '../judging/case.ts';
import { biggerOf } from './bigger.ts';
import type { Judged } from './judged.ts';
import { nearestMisses } from './nearest-misses.ts';
import { inOrder } from './rank.ts';
import { rankedOf } from './ranked-of.ts';

interface Ground {
  readonly answers: Answers;
  readonly shop: ShopCase;
  readonly families: readonly Family[];
  readonly judged: readonly Judged[];
  readonly tables: readonly RotaryCase[];
  readonly winner: Judged | null;
}

type Argued = Pick<Decision, 'classes' | 'route' | 'bigger' | 'otherWay'>;

/** Which kind of rotary and which route, why not the others, and why not a size larger. */
export function argue({ answers, shop, families, judged, tables, winner }: Ground): Argued {
  const best = bestBy(answers, shop);
  // where the winner is among them there is no question
  const bestOf: BestOf = (some) => (winner !== null && some.includes(winner) ? winner : best(some));
  const ground = groundFor('built-in', answers, shop, families, { judged, tables });
  return {
    classes: classFindings((of) => groundFor(of, answers, shop, families, { judged, tables }), bestOf),
    route: routeFindings({ ...ground, all: judged }, bestOf),
    bigger: biggerOf(winner, judged, families, bestOf),
    otherWay: otherWayOf(winner, judged),
  };
}

/** The winner's machine and rotary, mounted the other way. */
function otherWayOf(winner: Judged | null, judged: readonly Judged[]): string | null {
  if (winner === null) return null;
  const { machine, rotary } = winner.setUp.candidate;
  const other = judged.find(
    ({ setUp: { candidate }, id }) =>
      id !== winner.id && candidate.machine.key === machine.key && candidate.rotary.key === rotary.key,
  );
  return other?.id ?? null;
}

/** Those that surely pass, in the user's order; else the open one that may cover most; else the nearest miss. */
const bestBy =
  (answers: Answers, shop: ShopCase): BestOf =>
  (some) => {
    const sure = some.filter(({ passes }) => passes === 'yes').map((each) => rankedOf(each, shop));
    const [first] = inOrder(answers.matters, shop.assume.band, sure, 1);
    if (first !== undefined) return some.find(({ id }) => id === first) ?? null;
    const [open] = some
      .filter(({ passes }) => passes === 'open')
      .toSorted((a, b) => b.coverage.high - a.coverage.high || (a.id < b.id ? -1 : 1));
    return open ?? nearestMisses(some, shop.assume.leastCoverage)[0] ?? null;
  };

/** The arrangements that the arguments name, so that they are listed. */
export const namedIn = ({ classes, route, bigger, otherWay }: Argued): readonly string[] => [
  ...(otherWay === null ? [] : [otherWay]),
  ...[...classes, ...route.routes].flatMap(({ best }) => best ?? []),
  ...(route.ownMill?.takes ?? []).map(({ id }) => id),
  ...(route.ownMill?.next == null ? [] : [route.ownMill.next.id]),
  ...(bigger?.next == null ? [] : [bigger.next.best]),
];
