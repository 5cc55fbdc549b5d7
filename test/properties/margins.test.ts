import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withNumber, withRange } from '../../src/rules/flips/value-at.ts';
import { movableAnswers } from '../../src/rules/stability/movable-answers.ts';
import { runningOf } from '../../src/rules/standing.ts';
import { anyShop, built } from './random-shops.ts';

/** Shops in which checks that need a measure, or a family that may not be held, come and go within a range. */
const SEEDS = [2, 50, 106, 165, 3067];

const OF_SIZE = /tools|height|lowest|tolerance|size|slant/;

/** From a fifth of the way toward one end of what is accepted, to that end or part of it. */
const WAYS = [-0.9, -0.3, 0.3, 0.9];

describe('the margin on a range of answers takes in that on every answer in it', () => {
  test.each(SEEDS)('seed %i, and what is recommended on the range is so on each', (seed) => {
    const [shop] = fc.sample(anyShop, { seed, numRuns: 1 });
    if (shop === undefined) throw new Error('no shop');
    const { answers: plain, catalog } = built(shop);
    const answers = {
      ...plain,
      matters: ['margin' as const, ...plain.matters.filter((each) => each !== 'margin')],
    };
    const ground = { answers, catalog };
    let held = 0;
    const outside: string[] = [];
    for (const { answer, at, domain, keys } of movableAnswers(answers)) {
      if (!OF_SIZE.test(answer)) continue;
      for (const way of WAYS) {
        const end = way < 0 ? at + way * (at - domain.low) : at + way * (domain.high - at);
        const [low, high] = [Math.min(at, end), Math.max(at, end)];
        if (low === high) continue;
        const wide = runningOf(withRange(ground, keys, [low, high]).answers, catalog);
        for (const share of [0, 0.3, 0.6, 1]) {
          const value = low + share * (high - low);
          const one = runningOf(withNumber(ground, keys, value).answers, catalog);
          for (const { id, measures } of one.running) {
            const its = wide.running.find((each) => each.id === id)?.measures.margin;
            if (measures.margin === null || its === null || its === undefined) continue;
            held += 1;
            if (measures.margin.low < its.low - 1e-9 || measures.margin.high > its.high + 1e-9)
              outside.push(`${id}: ${answer} = ${value} of ${low} to ${high}`);
          }
          if (wide.outcome === 'recommended' && one.ranking.winner !== wide.ranking.winner)
            outside.push(`${answer} = ${value}: ${one.ranking.winner}, not ${wide.ranking.winner}`);
        }
      }
    }
    expect(outside).toEqual([]);
    expect(held).toBeGreaterThan(20);
  });
});
