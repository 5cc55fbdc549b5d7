import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { familiesOf } from '../../src/rules/arranging/family.ts';
import type { Verdict } from '../../src/rules/decision.ts';
import { shopCase } from '../../src/rules/facts/shop-facts.ts';
import { known } from '../../src/rules/judging/value.ts';
import { worthOf } from '../../src/rules/money/worth.ts';
import { coverageAtCorners, coverageOf } from '../../src/rules/weighing/coverage.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_PART } from './example-shop.ts';

type Yearly = Partial<Part['yearly']>;

const shopOf = (yearly: readonly Yearly[]): Answers => ({
  ...EXAMPLE_ANSWERS,
  parts: yearly.map((each, index) => ({
    ...EXAMPLE_PART,
    name: `Cleat ${index}`,
    yearly: { ...EXAMPLE_PART.yearly, ...each },
  })),
});

const heldIn = (answers: Answers, verdicts: readonly Verdict[]) =>
  familiesOf(answers.parts, shopCase(answers)).fiveAxis.map((family, index) => ({
    family,
    verdict: verdicts[index] ?? 'fails',
  }));

const paybacksOf = (answers: Answers, verdicts: readonly Verdict[], price: number) =>
  worthOf(
    {
      axes: 2,
      families: heldIn(answers, verdicts),
      price: known(price, 'price'),
      swaps: known(0, 'swaps'),
      swapHours: { low: 0, high: 0 },
    },
    shopCase(answers),
  );

describe('coverage at the corners of hours that are not known', () => {
  const one: readonly Yearly[] = [{ quantity: [100, 4000] }, {}];

  test('whoever holds one part more covers more at every corner, though the ranges overlap', () => {
    const more = heldIn(shopOf(one), ['holds', 'holds']);
    const less = heldIn(shopOf(one), ['holds', 'fails']);
    expect(coverageOf(less).high).toBeGreaterThan(0.8);
    const [a, b] = [coverageAtCorners(more) ?? [], coverageAtCorners(less) ?? []];
    expect(a).toHaveLength(2);
    expect(a.every(({ low }, corner) => low > (b[corner]?.high ?? Number.POSITIVE_INFINITY))).toBe(true);
  });

  test('none where all hours are known, nor where more than three are not', () => {
    expect(coverageAtCorners(heldIn(shopOf([{}, {}]), ['holds', 'holds']))).toBeNull();
    const open = Array.from({ length: 4 }, (): Yearly => ({ quantity: [100, 4000] }));
    expect(coverageAtCorners(heldIn(shopOf(open), []))).toBeNull();
    expect(coverageAtCorners(heldIn(shopOf(open.slice(1)), []))).toHaveLength(8);
  });

  test('an open family makes each corner a range', () => {
    const [first] = coverageAtCorners(heldIn(shopOf(one), ['open', 'holds'])) ?? [];
    expect(first?.low).toBeLessThan(first?.high ?? 0);
  });
});

type Open = readonly [low: number, high: number];
const within = ([low, high]: Open, share: number): number => low + share * (high - low);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const anyVerdict = fc.constantFrom<Verdict>('holds', 'fails', 'open');
const three = fc.tuple(anyVerdict, anyVerdict, anyVerdict);

test('coverage of two that compare the same way at every corner does so for all hours between', () => {
  let told = 0;
  fc.assert(
    fc.property(
      fc.tuple(fc.integer({ min: 2, max: 40 }), fc.integer({ min: 2, max: 40 })),
      three,
      three,
      fc.tuple(share, share),
      ([first, second], mine, its, shares) => {
        const ranges: readonly Open[] = [
          [50, 50 * first],
          [80, 80 * second],
        ];
        const at = (quantities: readonly (number | Open)[]) =>
          shopOf([...quantities.map((quantity) => ({ quantity })), {}]);
        const a = coverageAtCorners(heldIn(at(ranges), mine)) ?? [];
        const b = coverageAtCorners(heldIn(at(ranges), its)) ?? [];
        expect(a).toHaveLength(4);
        if (!a.every(({ low }, corner) => low > (b[corner]?.high ?? 1))) return;
        told += 1;
        const between = at(ranges.map((range, index) => within(range, shares[index] ?? 0)));
        expect(coverageOf(heldIn(between, mine)).low).toBeGreaterThan(coverageOf(heldIn(between, its)).high);
      },
    ),
    { numRuns: 400, seed: 20261126 },
  );
  expect(told).toBeGreaterThan(40);
});

describe('payback at the corners of yearly work that is not known', () => {
  const changed = fc.constantFrom('quantity', 'lots', 'setupMinutes', 'handlingMinutes', 'setups');
  const verdict = fc.constantFrom<Verdict>('holds', 'fails');

  test('what is so at every corner is so for every value between', () => {
    let told = 0;
    fc.assert(
      fc.property(
        changed,
        fc.integer({ min: 2, max: 6 }),
        fc.tuple(verdict, verdict),
        fc.tuple(verdict, verdict),
        fc.integer({ min: 20_000, max: 90_000 }),
        fc.integer({ min: 20_000, max: 90_000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (key, times, mine, its, myPrice, itsPrice, share) => {
          const low = EXAMPLE_PART.yearly[key];
          if (typeof low !== 'number') throw new Error(`${key} is not known`);
          const at = (value: number | readonly [number, number]) => shopOf([{ [key]: value }, {}]);
          const ranged = at([low, low * times]);
          const a = paybacksOf(ranged, mine, myPrice).paybackAt;
          const b = paybacksOf(ranged, its, itsPrice).paybackAt;
          if (a === null || b === null) return;
          const isLess = a.every(({ high }, corner) => high < (b[corner]?.low ?? 0));
          if (!isLess) return;
          told += 1;
          const between = at(low + share * (low * times - low));
          expect(paybacksOf(between, mine, myPrice).payback.high).toBeLessThan(
            paybacksOf(between, its, itsPrice).payback.low,
          );
        },
      ),
      { numRuns: 300, seed: 20261126 },
    );
    expect(told).toBeGreaterThan(40);
  });

  test('of two families at once, with a rate and running costs that are not known', () => {
    let told = 0;
    const price = fc.integer({ min: 20_000, max: 200_000 });
    fc.assert(
      fc.property(
        fc.tuple(changed, changed),
        fc.tuple(verdict, verdict),
        fc.tuple(verdict, verdict),
        fc.tuple(price, price),
        fc.tuple(share, share, share, share),
        ([one, other], mine, its, [myPrice, itsPrice], shares) => {
          const ofPart = (key: typeof one): Open => {
            const low = EXAMPLE_PART.yearly[key];
            if (typeof low !== 'number') throw new Error(`${key} is not known`);
            return [low, 2 * low];
          };
          const ranges: readonly Open[] = [ofPart(one), ofPart(other), [50, 110], [0, 800]];
          const at = ([first, second, shopRate, yearlyCosts]: readonly (number | Open)[]): Answers => {
            if (first === undefined || second === undefined) throw new Error('two families');
            if (shopRate === undefined || yearlyCosts === undefined) throw new Error('no money');
            const shop = shopOf([{ [one]: first }, { [other]: second }]);
            return { ...shop, money: { ...shop.money, shopRate, yearlyCosts } };
          };
          const a = paybacksOf(at(ranges), mine, myPrice).paybackAt;
          const b = paybacksOf(at(ranges), its, itsPrice).paybackAt;
          if (a === null || b === null) return;
          expect(a).toHaveLength(16 * 2);
          if (!a.every(({ high }, corner) => high < (b[corner]?.low ?? 0))) return;
          told += 1;
          const between = at(ranges.map((range, index) => within(range, shares[index] ?? 0)));
          expect(paybacksOf(between, mine, myPrice).payback.high).toBeLessThan(
            paybacksOf(between, its, itsPrice).payback.low,
          );
        },
      ),
      { numRuns: 400, seed: 20261127 },
    );
    expect(told).toBeGreaterThan(40);
  });
});
