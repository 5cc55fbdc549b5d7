import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MEASURES, type Measure } from '../../src/questions/answers.ts';
import { dominates, unbeaten } from '../../src/rules/weighing/dominance.ts';
import { rankBy } from '../../src/rules/weighing/rank.ts';
import { MORE_IS_BETTER, type Ranked } from '../../src/rules/weighing/scores.ts';

const RUNS = { numRuns: 2000, seed: 20260109 };
const BAND = 0.05;
const DOMINATING = MEASURES.filter((measure) => measure !== 'margin');

type Numbers = Readonly<Record<Measure, number | null>>;

/** Near each other, so that bands and ties matter; a payback that never comes now and then. */
const near = (values: readonly (number | null)[]) => fc.constantFrom(...values);
const numbers: fc.Arbitrary<Numbers> = fc.record({
  coverage: near([0.9, 0.93, 0.96, 1]),
  viseStations: near([0, 1, 2, null]),
  payback: near([4, 4.1, 4.3, null]),
  price: near([100, 103, 106, 120]),
  floorArea: near([5, 5.2, 6]),
  swapHours: near([0, 40, 41]),
  margin: near([-0.1, 0.02, 0.0205, 0.3]),
});
const order = fc.shuffledSubarray([...MEASURES], { minLength: 1 });

const ranked = (id: string, given: Numbers): Ranked => ({
  id,
  surely: true,
  measures: Object.fromEntries(
    MEASURES.map((measure) => {
      const value = given[measure];
      return [measure, value === null ? null : { low: value, high: value }];
    }),
  ) as Ranked['measures'],
});

const anyField = fc
  .array(numbers, { minLength: 1, maxLength: 8 })
  .map((all) => all.map((each, index) => ranked(`arrangement ${index}`, each)));

const winnerOf = (matters: readonly Measure[], field: readonly Ranked[]) =>
  rankBy(matters, BAND, unbeaten(field)).winner;

describe('what another beats on every measure', () => {
  test('never wins, and neither does the order of the rows', () => {
    fc.assert(
      fc.property(order, anyField, (matters, field) => {
        const winner = field.find(({ id }) => id === winnerOf(matters, field));
        if (winner === undefined) throw new Error('all of it is known, so one wins');
        expect(field.filter((other) => dominates(DOMINATING, other, winner))).toEqual([]);
        expect(winnerOf(matters, [...field].reverse())).toBe(winner.id);
      }),
      RUNS,
    );
  });

  test('changes no winner when it is added, however large its margin', () => {
    let added = 0;
    fc.assert(
      fc.property(
        order,
        anyField,
        fc.nat(7),
        fc.subarray(DOMINATING, { minLength: 1 }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (matters, field, at, worse, by) => {
          const model = field[at % field.length];
          if (model === undefined) return;
          const spoiled = Object.fromEntries(
            MEASURES.map((measure) => {
              const value = model.measures[measure];
              if (measure === 'margin') return [measure, { low: 0.9, high: 0.9 }];
              if (value === null || !worse.includes(measure)) return [measure, value];
              const less = value.low * (MORE_IS_BETTER[measure] ? 1 - by : 1 + by);
              return [measure, { low: less, high: less }];
            }),
          ) as Ranked['measures'];
          const extra: Ranked = { id: 'added', surely: true, measures: spoiled };
          if (!dominates(DOMINATING, model, extra)) return;
          added += 1;
          expect(winnerOf(matters, [...field, extra])).toBe(winnerOf(matters, field));
          expect(winnerOf(matters, [extra, ...field])).toBe(winnerOf(matters, field));
        },
      ),
      RUNS,
    );
    expect(added).toBeGreaterThan(500);
  });

  test('by its margin alone it would have won', () => {
    const plain = { ...BASE, price: 100, margin: 0.02 };
    const wide = { ...BASE, price: 103, margin: 0.3 };
    const field = [ranked('plain', plain), ranked('wide', wide)];
    expect(rankBy(['price', 'margin'], BAND, field).winner).toBe('wide');
    expect(winnerOf(['price', 'margin'], field)).toBe('plain');
  });
});

const BASE: Numbers = {
  coverage: 1,
  viseStations: 1,
  payback: 4,
  price: 100,
  floorArea: 5,
  swapHours: 0,
  margin: 0.1,
};

describe('on ranges', () => {
  const withPrice = (id: string, low: number, high: number, margin: number): Ranked => ({
    ...ranked(id, { ...BASE, margin }),
    measures: { ...ranked(id, { ...BASE, margin }).measures, price: { low, high } },
  });

  test('one that may turn out to be beaten never surely wins by its margin', () => {
    const field = [ranked('plain', { ...BASE, margin: 0.02 }), withPrice('open', 98, 104, 0.3)];
    expect(winnerOf(['price', 'margin'], field)).toBeNull();
  });

  test('what is sure on ranges stays so for every value in them', () => {
    let [sure, open] = [0, 0];
    const spread = fc.record({
      low: fc.double({ min: 0.9, max: 1, noNaN: true }),
      high: fc.double({ min: 1, max: 1.1, noNaN: true }),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        order,
        anyField,
        fc.array(spread, { minLength: 8, maxLength: 8 }),
        fc.constantFrom<Measure>('price', 'payback', 'margin'),
        (matters, field, spreads, measure) => {
          const made = field.map((each, index) => {
            const [value, { low, high, at } = { low: 1, high: 1, at: 0 }] = [
              each.measures[measure],
              spreads[index],
            ];
            if (value === null) return { wide: each, point: each };
            const ends = [value.low * low, value.low * high].sort((a, b) => a - b) as [number, number];
            const inside = ends[0] + at * (ends[1] - ends[0]);
            const put = (from: number, to: number): Ranked => ({
              ...each,
              measures: { ...each.measures, [measure]: { low: from, high: to } },
            });
            return { wide: put(ends[0], ends[1]), point: put(inside, inside) };
          });
          const before = rankBy(matters, BAND, unbeaten(made.map(({ wide }) => wide)));
          const after = winnerOf(
            matters,
            made.map(({ point }) => point),
          );
          if (before.winner === null) open += 1;
          else sure += 1;
          if (before.winner !== null) expect(after).toBe(before.winner);
          expect(before.contenders).toContain(after);
        },
      ),
      RUNS,
    );
    expect(Math.min(sure, open)).toBeGreaterThan(200);
  });
});

describe('shared unknowns, corner by corner', () => {
  const paying = (id: string, payback: readonly number[]): Ranked => {
    const whole = { low: Math.min(...payback), high: Math.max(...payback) };
    const plain = ranked(id, BASE);
    return {
      ...plain,
      measures: { ...plain.measures, payback: whole },
      atCorners: { payback: payback.map((each) => ({ low: each, high: each })) },
    };
  };

  test('ranges that lie over each other leave nothing open where one is always ahead', () => {
    expect(winnerOf(['payback'], [paying('ahead', [4, 8]), paying('behind', [5, 10])])).toBe('ahead');
    expect(winnerOf(['payback'], [paying('a', [4, 10]), paying('b', [5, 8])])).toBeNull();
  });

  test('without corners on one side the ranges count', () => {
    const { atCorners: _, ...behind } = paying('behind', [5, 10]);
    expect(winnerOf(['payback'], [paying('ahead', [4, 8]), behind])).toBeNull();
  });
});
