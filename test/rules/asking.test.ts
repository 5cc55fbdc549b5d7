import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import { chanceToFail } from '../../src/rules/asking/chance-to-fail.ts';
import { hedged } from '../../src/rules/asking/hedged.ts';
import { likely } from '../../src/rules/asking/likely.ts';
import { usually } from '../../src/rules/asking/usually.ts';
import { ceiling } from '../../src/rules/checks/shop/ceiling.ts';
import { runningOf } from '../../src/rules/standing.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';
import { expectClose } from '../close-to.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from './example-shop.ts';

const asking = (answers: Answers, ...unasked: readonly string[]) =>
  askingOf(answers, EXAMPLE_CATALOG, unasked);
const names = (answers: Answers, ...unasked: readonly string[]): readonly string[] =>
  asking(answers, ...unasked).answers.map(({ answer }) => answer);

/** One arrangement: one rotary that stands one way on one machine. */
const ALONE: Catalog = {
  ...EXAMPLE_CATALOG,
  rotaries: EXAMPLE_CATALOG.rotaries.map((rotary) => ({
    ...rotary,
    hold:
      rotary.hold === 'unknown' ? rotary.hold : Object.fromEntries(Object.entries(rotary.hold).slice(0, 1)),
  })),
};

const { shop, work, money } = EXAMPLE_ANSWERS;
const OPEN_BUDGET: Answers = { ...EXAMPLE_ANSWERS, money: { ...money, budget: 'unknown' } };
const OPEN_RATE: Answers = { ...EXAMPLE_ANSWERS, money: { ...money, shopRate: 'unknown' } };

describe('what is worth asking', () => {
  test('is nothing once the result stands, although answers of the winner are open that no verdict hangs on', () => {
    const answers: Answers = {
      ...EXAMPLE_ANSWERS,
      shop: { ...shop, air: { flow: 'unknown', bar: 'unknown' } },
      money: { ...money, interest: 'unknown', residual: 'unknown', years: 'unknown' },
    };
    expect(runningOf(answers, EXAMPLE_CATALOG).outcome).toBe('recommended');
    expect(asking(answers)).toMatchObject({ outcome: 'recommended', left: 1, answers: [] });
  });

  test('is what is held against nothing while nobody names it, until somebody was asked', () => {
    expect(runningOf(OPEN_BUDGET, EXAMPLE_CATALOG).outcome).toBe('recommended');
    expect(asking(OPEN_BUDGET, 'money.budget').outcome).toBe('open');
    expect(names(OPEN_BUDGET, 'money.budget')).toContain('money.budget');
    expect(asking(OPEN_BUDGET)).toMatchObject({ outcome: 'recommended', answers: [] });
  });

  test('is what matters most as soon as one is sure to pass, unless it is the only one', () => {
    expect(names(EXAMPLE_ANSWERS, 'matters')).toEqual(
      runningOf(EXAMPLE_ANSWERS, EXAMPLE_CATALOG).field.length > 1 ? ['matters'] : [],
    );
    expect(runningOf(EXAMPLE_ANSWERS, ALONE).field).toHaveLength(1);
    expect(askingOf(EXAMPLE_ANSWERS, ALONE, ['matters']).answers).toEqual([]);
    expect(askingOf(OPEN_RATE, ALONE, ['money.shopRate', 'matters']).answers).toEqual([]);
  });

  test('is no detail that only says who comes first while one alone may pass', () => {
    const answers: Answers = {
      ...EXAMPLE_ANSWERS,
      shop: { ...shop, ceiling: [2000, 4000] },
      parts: EXAMPLE_ANSWERS.parts.map((part) => ({
        ...part,
        yearly: { ...part.yearly, quantity: 'unknown' },
      })),
    };
    expect(askingOf(answers, ALONE, []).answers.map(({ answer }) => answer)).toEqual(['shop.ceiling']);
  });
});

describe('answers that nobody was asked for', () => {
  test('may be anything; those that were asked for stay not named', () => {
    expect(hedged(OPEN_BUDGET, new Set(['money.budget'])).money.budget).toEqual([0, 1e9]);
    expect(hedged(OPEN_BUDGET, new Set()).money.budget).toBe('unknown');
    expect(hedged(EXAMPLE_ANSWERS, new Set(['money.budget'])).money.budget).toBe(money.budget);
  });

  test('a part is not taken for centered', () => {
    const [part] = hedged(EXAMPLE_ANSWERS, new Set(['parts[Example].eccentricity'])).parts;
    expect(part?.eccentricity).toBe('unknown');
  });

  test('a large hole may be drilled into it, as far off as is not known', () => {
    const [part] = hedged(EXAMPLE_ANSWERS, new Set(['parts[Example].drill'])).parts;
    expect(part?.drill).toEqual({ diameter: 'unknown', feed: 'unknown', offset: 'unknown' });
    const [asked] = hedged(EXAMPLE_ANSWERS, new Set()).parts;
    expect(asked?.drill).toBe(EXAMPLE_ANSWERS.parts[0]?.drill);
  });
});

test('of the shop that lifts by hand, a hole that would change what is recommended is asked for', () => {
  const catalog = demoCatalog();
  const { answers } = demoAnswers('shop-hand-lifting', catalog);
  const drilled = {
    ...answers,
    parts: answers.parts.map((part) =>
      part.name === 'Heddle clamp' ? { ...part, drill: { diameter: 20, feed: 0.3, offset: 60 } } : part,
    ),
  };
  expect(runningOf(drilled, catalog).ranking.winner).not.toBe(runningOf(answers, catalog).ranking.winner);
  expect(askingOf(answers, catalog, []).answers).toEqual([]);
  const found = askingOf(answers, catalog, ['parts[Heddle clamp].drill']);
  expect(found.outcome).toBe('open');
  expect(found.answers.map(({ answer }) => answer.replace(/\.[a-z]+$/, ''))).toContain(
    'parts[Heddle clamp].drill',
  );
});

describe('where answers usually lie', () => {
  test('only what is not known is narrowed, and only as far as it says', () => {
    const usual = { low: 2, high: 6 };
    expect(usually('unknown', usual)).toEqual([2, 6]);
    expect(usually([4, 9], usual)).toEqual([4, 6]);
    expect(usually([7, 9], usual)).toEqual([7, 9]);
    expect(usually(9, usual)).toBe(9);
    expect(likely(EXAMPLE_ANSWERS)).toEqual(EXAMPLE_ANSWERS);
  });

  test('within what not sure stands for', () => {
    const open: Answers = {
      ...EXAMPLE_ANSWERS,
      shop: { ...shop, ceiling: 'unknown', floorRating: 'unknown' },
      work: { ...work, visesWanted: 'unknown' },
    };
    expect(likely(open)).toMatchObject({
      shop: { ceiling: [2600, 5000], floorRating: [5, 30] },
      work: { visesWanted: [0, 3] },
    });
  });
});

describe('how likely an open check fails', () => {
  const chance = (have: readonly [number, number], unknowns: number): number => {
    const [low, high] = have;
    const need = { low: 3000, high: 3000 };
    return chanceToFail(
      { check: ceiling, need, have: { low, high }, margin: { low: low - 3000, high: high - 3000 } },
      unknowns,
    );
  };

  test('on one answer, the share of its range that is not enough, by ratios', () => {
    // from half of what is needed to twice as much
    expectClose(chance([1500, 6000], 1), 0.5, { absolute: 1e-9 });
    expect(chance([3000, 6000], 1)).toBe(0);
    expect(chance([1000, 2999], 1)).toBe(1);
  });

  test('on several, less where the middle of the range is enough', () => {
    expect(chance([2500, 6000], 4)).toBeLessThan(chance([2500, 6000], 1));
    expectClose(chance([1500, 6000], 4), 0.5, { absolute: 1e-9 });
  });
});
