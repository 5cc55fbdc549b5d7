import type { Interval } from '../../quantities/interval.ts';
import { gapsOf, type Outcome } from '../judging/outcome.ts';
import type { Standing } from '../standing.ts';
import type { Judged } from '../weighing/judged.ts';
import { howLikelyKnown } from './how-likely-known.ts';

/** What asking for one answer is expected to do. */
export interface Narrowing {
  /** path of the answer */
  readonly answer: string;
  /** arrangements that may win and that it may drop */
  readonly touches: number;
  /** how many of them it is expected to drop, a share of one each, weighed by how likely it is known */
  readonly drops: number;
}

/**
 * For each answer that is not known and may still change the result: how much of the field it is expected to drop. Over
 * the arrangements that may win, every check that is open fails with some chance, the values that it may take lying evenly
 * between their ends; that chance is shared among the unknowns that it hangs on. What only moves hours or money orders
 * the field, and comes last. The most first; ties by path.
 */
export function narrowings({ judged, ranking, outcome }: Standing): readonly Narrowing[] {
  const contenders = new Set(ranking.contenders);
  const found = new Map<string, { touches: number; drops: number }>();
  for (const each of judged) {
    if (!contenders.has(each.id)) continue;
    const chances = new Map<string, number>();
    for (const open of openOf(each)) {
      const paths = gapsOf(open).flatMap(({ path, ask }) => (ask === 'user' ? [path] : []));
      const share = chanceToFail(open.margin) / Math.max(1, paths.length);
      for (const path of paths) chances.set(path, Math.max(chances.get(path) ?? 0, share));
    }
    if (outcome === 'open')
      for (const path of orderedBy(each)) if (!chances.has(path)) chances.set(path, ORDERS_ONLY);
    for (const [path, chance] of chances) {
      const known = found.get(path) ?? { touches: 0, drops: 0 };
      known.touches += 1;
      known.drops += chance;
      found.set(path, known);
    }
  }
  return [...found]
    .map(([answer, { touches, drops }]) => ({ answer, touches, drops: drops * howLikelyKnown(answer) }))
    .sort((a, b) => b.drops - a.drops || (a.answer < b.answer ? -1 : 1));
}

/** What an answer counts for an arrangement that it cannot drop, but only place elsewhere in the order. */
const ORDERS_ONLY = 0.02;

const openOf = ({ own, families }: Judged): readonly Outcome[] =>
  [own, ...families.map(({ outcomes }) => outcomes)].flat().filter(({ verdict }) => verdict === 'open');

/** The unknowns in its hours, its price and its payback. */
function orderedBy({ families, priced, swaps, worth, coverage }: Judged): readonly string[] {
  const hours = coverage.low === coverage.high ? [] : families.flatMap(({ family }) => family.hours.gaps);
  return [...hours, ...priced.total.gaps, ...swaps.gaps, ...worth.payback.gaps].flatMap(({ path, ask }) =>
    ask === 'user' ? [path] : [],
  );
}

/** The share of a margin that lies below zero, its values taken as spread evenly; nothing bounds it: as likely as not. */
function chanceToFail({ low, high }: Interval): number {
  if (low >= 0) return 0;
  if (high <= 0) return 1;
  if (!Number.isFinite(low)) return Number.isFinite(high) ? 0.9 : 0.5;
  return Number.isFinite(high) ? -low / (high - low) : 0.3;
}
