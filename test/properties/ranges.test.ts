import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import type { Stability } from '../../src/rules/decision.ts';
import { withNumber } from '../../src/rules/flips/value-at.ts';
import { type Movable, movableAnswers } from '../../src/rules/stability/movable-answers.ts';
import { stabilityOf } from '../../src/rules/stability/stability-of.ts';
import { runningOf, standingOf } from '../../src/rules/standing.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';
import { anyShop, built } from './random-shops.ts';

const SHARES = fc.sample(fc.double({ min: 0, max: 1, noNaN: true }), { numRuns: 100, seed: 20261126 });

interface Shop {
  readonly answers: Answers;
  readonly catalog: Catalog;
}

/** Every range beside the answer that it is of. */
const rangesOf = (shop: Shop): readonly (readonly [Movable, Stability])[] => {
  const ranges = stabilityOf(standingOf(shop.answers, shop.catalog), shop);
  return movableAnswers(shop.answers).flatMap((movable) => {
    const range = ranges.find(({ answer }) => answer === movable.answer);
    return range === undefined ? [] : [[movable, range] as const];
  });
};

const winnerWith = (shop: Shop, { keys }: Movable, value: number): string | null => {
  const { answers, catalog } = withNumber(shop, keys, value);
  return runningOf(answers, catalog).ranking.winner;
};

const EVENLY = Array.from({ length: 61 }, (_, step) => step / 60);

/** Values in a range at which something else is recommended, of a hundred by chance, or 61 evenly spaced, and the ends. */
function faultsIn(
  shop: Shop,
  winner: string | null,
  [movable, range]: readonly [Movable, Stability],
  shares: readonly number[] = SHARES,
) {
  const low = range.low ?? movable.domain.low;
  const high = range.high ?? movable.domain.high;
  return [...shares.map((share) => low + share * (high - low)), low, high]
    .map((value) => (movable.whole ? Math.round(value) : value))
    .filter((value, index, all) => all.indexOf(value) === index)
    .filter((value) => winnerWith(shop, movable, value) !== winner)
    .map((value) => `${range.answer} = ${value}, in ${range.low} to ${range.high}`);
}

/** Ends a little beyond which another arrangement, or none, is recommended. */
const changesBeyond = (shop: Shop, winner: string | null, [movable, range]: readonly [Movable, Stability]) =>
  [range.low, range.high].flatMap((end) => {
    if (end === null) return [];
    const beyond =
      end + Math.sign(end - range.at || (end === range.low ? -1 : 1)) * Math.max(end * 0.08, 0.02);
    return [winnerWith(shop, movable, beyond) !== winner];
  });

describe('within its range an answer keeps the recommendation, wherever it lies', () => {
  test('random shops', () => {
    let told = 0;
    fc.assert(
      fc.property(anyShop, (shop) => {
        const { answers, catalog } = built(shop);
        const { winner } = standingOf(answers, catalog).ranking;
        const ranges = rangesOf({ answers, catalog });
        told += ranges.length;
        expect(ranges.flatMap((each) => faultsIn({ answers, catalog }, winner, each))).toEqual([]);
      }),
      { numRuns: 6, seed: 20261126 },
    );
    expect(told).toBeGreaterThan(60);
  });

  // where the room to spare, and how many vises stand beside the rotary, tell arrangements apart within a range
  test.each([
    [5, /^tools\./],
    [8, /^work\./],
  ])('random shop %i of seed 777, evenly spaced: %s', (index, some) => {
    const drawn = fc.sample(anyShop, { seed: 777, numRuns: 9 })[index];
    if (drawn === undefined) throw new Error('no such shop');
    const shop = built(drawn);
    const { winner } = standingOf(shop.answers, shop.catalog).ranking;
    expect(winner).not.toBeNull();
    const ranges = rangesOf(shop).filter(([{ answer }]) => some.test(answer));
    expect(ranges.length).toBeGreaterThan(2);
    expect(ranges.flatMap((each) => faultsIn(shop, winner, each, EVENLY))).toEqual([]);
  });

  describe('the shop that lifts by hand', () => {
    const shop = demoShop('shop-hand-lifting');
    const { winner } = standingOf(shop.answers, shop.catalog).ranking;
    const ranges = rangesOf(shop);

    test('has a range for each of its numbers', () => {
      expect(ranges.length).toBe(movableAnswers(shop.answers).length);
      expect(ranges.length).toBeGreaterThan(80);
    });

    test('keeps it: every eighth of them, decided a hundred times on the whole catalog', () => {
      const some = ranges.filter((_each, index) => index % 8 === 3);
      expect(some.flatMap((each) => faultsIn(shop, winner, each))).toEqual([]);
    });

    test('and loses it soon beyond most of the ends', () => {
      const changes = ranges.flatMap((each) => changesBeyond(shop, winner, each));
      expect(changes.length).toBeGreaterThan(10);
      expect(changes.filter((change) => change).length).toBeGreaterThan(0.6 * changes.length);
    });
  });
});

function demoShop(name: string): Shop {
  const catalog = demoCatalog();
  return { answers: demoAnswers(name, catalog).answers, catalog };
}
