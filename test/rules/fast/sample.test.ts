import { describe, expect, test } from 'vitest';
import { marketOf } from '../../../bench/market/market.ts';
import type { Answers } from '../../../src/questions/answers.ts';
import { familiesOf } from '../../../src/rules/arranging/family.ts';
import { askingOf } from '../../../src/rules/asking/asking.ts';
import type { Bench } from '../../../src/rules/fast/judge-one.ts';
import { judgedInFull, marketBench } from '../../../src/rules/fast/judge-one.ts';
import { type Sample, sampleOf, stretchesOf } from '../../../src/rules/fast/sample.ts';
import { atHand } from '../../../src/rules/kept-work.ts';
import { standingOfFew } from '../../../src/rules/standing.ts';
import { demoCatalog } from '../../catalog-demo/demo.ts';

const demo = demoCatalog();
/** Just large enough to be judged as a market. */
const { answers: told, catalog: large } = marketOf(demo, {
  machines: 130,
  rotaries: 100,
  families: 2,
  seed: 4,
  catalogGaps: 0.03,
});
const early: Answers = {
  ...told,
  shop: { ...told.shop, ceiling: 'unknown', floorRating: 'unknown' },
  money: { ...told.money, budget: 'unknown', years: 'unknown' },
};
const OPEN_EARLY = ['shop.ceiling', 'shop.floorRating', 'money.budget', 'money.years', 'money.plates'];

describe('stretches', () => {
  test('100 in four', () => {
    expect(stretchesOf(100, 4)).toEqual([
      [0, 2],
      [2, 9],
      [9, 31],
      [31, 100],
    ]);
  });

  test.each([0, 1, 2, 23, 24, 25, 400, 65_000])('%i: each place once, thinner further down', (length) => {
    const stretches = stretchesOf(length, 24);
    expect(stretches.length).toBeLessThanOrEqual(24);
    expect(stretches.flat()).toEqual(
      stretches.flatMap((_, at) => [at === 0 ? 0 : stretches[at - 1]?.[1], stretches[at]?.[1]]),
    );
    expect(stretches.at(-1)?.[1] ?? 0).toBe(length);
    const long = stretches.map(([from, to]) => to - from);
    // rounding may make one shorter by one
    expect(long.every((each, at) => each >= (long[at - 1] ?? 1) - 1)).toBe(true);
  });
});

describe('a few of a market', () => {
  const sampled = (answers: Answers): { readonly bench: Bench; readonly sample: Sample } => {
    const { shop, world, casesOf } = atHand(answers, large);
    const { fiveAxis } = familiesOf(answers.parts, shop, casesOf);
    const bench = { shop, families: fiveAxis, owned: answers.shop.machine, memo: world.memo };
    const together = marketBench(world, fiveAxis, answers.shop.machine);
    return { bench, sample: sampleOf(together, world, large, answers) };
  };

  test('each is as the plain judge has it, and may pass', () => {
    const { bench, sample } = sampled(early);
    expect(sample.judged.length).toBeGreaterThan(10);
    expect(sample.of).toBeGreaterThan(sample.judged.length);
    for (const each of sample.judged) {
      expect(each.passes).not.toBe('no');
      const full = judgedInFull(bench, each.setUp.candidate);
      expect([each.passes, each.coverage, each.measures.price]).toEqual([
        full.passes,
        full.coverage,
        full.measures.price,
      ]);
    }
    expect(new Set(sample.judged.map(({ id }) => id)).size).toBe(sample.judged.length);
  });

  test('the same answers give the same few', () => {
    const ids = (): readonly string[] => sampled(early).sample.judged.map(({ id }) => id);
    expect(ids()).toEqual(ids());
  });
});

describe('what is worth asking of a market', () => {
  test('is seen by a few of it, and says of how many', () => {
    const asking = askingOf(early, large, [
      'shop.ceiling',
      'shop.floorRating',
      'money.budget',
      'money.years',
    ]);
    expect(asking.outcome).toBe('open');
    expect(asking.outOf).toBeGreaterThan(100);
    expect(asking.answers.map(({ answer }) => answer)).toContain('shop.ceiling');
    for (const { answer } of asking.answers) expect(OPEN_EARLY).toContain(answer);
  });

  test('where only sellers could say more of the few, all are looked at before nothing is asked', () => {
    expect(standingOfFew(told, large)?.outcome).toBe('open');
    expect(askingOf(told, large)).toMatchObject({ outcome: 'open', outOf: null, answers: [] });
  });

  test('and where all is known it is proven by all', () => {
    const { answers, catalog } = marketOf(demo, { machines: 130, rotaries: 100, families: 2, seed: 4 });
    const few = standingOfFew(answers, catalog);
    expect(few).toMatchObject({ outcome: 'open', ranking: { winner: null } });
    expect(askingOf(answers, catalog)).toMatchObject({ outcome: 'recommended', left: 1, outOf: null });
  });

  test('what the few hang on but nobody can be asked any more ends nothing: all are looked at', () => {
    const ranged: Answers = { ...told, shop: { ...told.shop, ceiling: [2600, 3200] } };
    const few = askingOf(ranged, large);
    expect(few.outOf).not.toBeNull();
    expect(few.answers.map(({ answer }) => answer)).toEqual(['shop.ceiling']);
    // the ceiling was answered, and only this is open
    const asking = askingOf(ranged, large, ['matters']);
    expect(asking.outOf).toBeNull();
    expect(askingOf(ranged, large, ['shop.ceiling'])).toEqual(few);
  });

  test('a catalog that is not large is looked at whole', () => {
    expect(standingOfFew(early, demo)).toBeNull();
    expect(askingOf(early, demo).outOf).toBeNull();
  });
});
