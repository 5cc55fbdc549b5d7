import type { Catalog } from '../../src/catalog/catalog.ts';
import { chanceOf } from '../interviews/chance.ts';
import { type Market, marketOf } from './market.ts';

/**
 * A market small enough to look at every arrangement: 2 to 6 machines and rotaries, 1 to 4 families. Two in three have
 * something unknown, in the catalog and in the answers; one in three has coarse numbers, so that need and have meet.
 */
export function smallMarket(after: Catalog, seed: number): Market {
  const { between, pick } = chanceOf(seed + SMALL);
  return marketOf(after, {
    machines: between(2, 6),
    rotaries: between(2, 6),
    families: between(1, 4),
    seed,
    catalogGaps: pick([0, 0.03, 0.1]),
    answerGaps: pick([0, 0.05, 0.15]),
    roomy: pick([true, true, false]),
    digits: pick([2, 3, 3]),
  });
}

/** Other chances than those that make rows and answers. */
const SMALL = 1_000_000;
