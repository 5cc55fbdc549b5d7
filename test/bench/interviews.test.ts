import { describe, expect, test } from 'vitest';
import { answeredWith, applies, everyQuestion } from '../../bench/interviews/asked.ts';
import { interviewedByTheProgram } from '../../bench/interviews/by-the-program.ts';
import { fixedOrder } from '../../bench/interviews/fixed-order.ts';
import { interviewed } from '../../bench/interviews/interview.ts';
import { simulatedShop } from '../../bench/interviews/shops.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';
import { runningOf, standingOf } from '../../src/rules/standing.ts';
import { demoCatalog } from '../catalog-demo/demo.ts';

const CATALOG = demoCatalog();
const seeds = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index + 1);

describe('simulated shops', () => {
  test('are the same for the same seed, and answers files that read back as they were', () => {
    for (const seed of seeds(40)) {
      const shop = simulatedShop(seed);
      expect(simulatedShop(seed)).toEqual(shop);
      const read = readAnswers('simulated', answersToFile(shop, { units: 'mm' }).text, CATALOG);
      expect(read.ok ? read.value.answers : read.problems).toEqual(shop);
    }
  });

  test('come out in more than one way', () => {
    const outcomes = seeds(12).map((seed) => standingOf(simulatedShop(seed), CATALOG).outcome);
    expect(new Set(outcomes)).toEqual(new Set(['recommended', 'none']));
  });
});

describe('an interview that asks everything that applies', () => {
  test.each(seeds(12))('comes to the result of the full answers: shop %i', (seed) => {
    const truth = simulatedShop(seed);
    let answers: Answers = {
      ...blankAnswers(truth.currency),
      parts: truth.parts.map(({ name }) => blankPart(name)),
    };
    for (const each of everyQuestion(truth.parts.length)) {
      if (applies(each, answers)) answers = answeredWith(each, answers, truth);
    }
    const [asked, whole] = [standingOf(answers, CATALOG), standingOf(truth, CATALOG)];
    expect([asked.outcome, asked.ranking.winner]).toEqual([whole.outcome, whole.ranking.winner]);
  });
});

test('the fixed order that skips what no longer matters is right, and asks less than everything', {
  timeout: 400_000,
}, () => {
  for (const seed of [2, 7]) {
    const found = interviewed(simulatedShop(seed), CATALOG, fixedOrder);
    expect(found.isRight).toBe(true);
    expect(found.skipped).toBeGreaterThan(0);
    expect(found.untilThree).toBeLessThanOrEqual(found.untilProven);
  }
});

test('while the cutter is not known, what holds with it is not ruled out for want of a place that surely reaches', () => {
  const shop = simulatedShop(178);
  const open = runningOf({ ...shop, tools: { ...shop.tools, largestCutter: 'unknown' } }, CATALOG);
  expect(open.running.map(({ id }) => id)).toEqual(
    expect.arrayContaining(runningOf(shop, CATALOG).running.map(({ id }) => id)),
  );
});

test('the program asks less, and comes to the result of the full answers, where another setting decides too', {
  timeout: 400_000,
}, () => {
  // in these an open setting of a contender decides, with nothing open in the one that is best as things stand; or it
  // stands where two vises find room only once it is known how far off center a part sits
  for (const seed of [19, 21, 60]) {
    const truth = simulatedShop(seed);
    const [fixed, adaptive] = [
      interviewed(truth, CATALOG, fixedOrder),
      interviewedByTheProgram(truth, CATALOG),
    ];
    expect(adaptive.isRight).toBe(true);
    expect(adaptive.untilProven).toBeLessThan(fixed.untilProven);
  }
});
