import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import { MATERIAL_IDS } from '../../src/mechanics/forces/materials.ts';
import { COUPLINGS } from '../../src/mechanics/lifting/coupling-multiplier.ts';
import { type Answers, MEASURES, type Part } from '../../src/questions/answers.ts';
import {
  ASSUMPTION_GROUPS,
  ASSUMPTIONS,
  type Assumption,
  type AssumptionOverrides,
} from '../../src/questions/assumptions.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';

function readBack(text: string): Answers {
  const read = readAnswers('written.yaml', text);
  if (!read.ok) throw new Error(`${read.problems.map(describeProblem).join('\n')}\n${text}`);
  return read.value.answers;
}

const significant = (value: number) => Math.round(value * 1e6) / 1e6 + 0;
const number = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map(significant);
const uncertain = (low: number, high: number) =>
  fc.oneof(
    number(low, high),
    fc.integer({ min: Math.ceil(low), max: Math.floor(high) }),
    fc.constant('unknown' as const),
    fc
      .tuple(number(low, high), number(low, high))
      .filter(([one, other]) => one !== other)
      .map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const),
  );
const length = uncertain(1, 400);
const oneOf = <Word extends string>(...words: Word[]) => fc.constantFrom(...words, 'unknown' as const);

const cut = fc.oneof(
  oneOf('light', 'medium', 'heavy'),
  fc.record({
    diameter: uncertain(40, 80),
    teeth: fc.oneof(fc.integer({ min: 1, max: 12 }), fc.constant('unknown' as const)),
    ap: uncertain(1, 40),
    ae: uncertain(1, 39),
    fz: uncertain(0.01, 1).map((value) => (value === 0 ? 1 : value)),
    vc: uncertain(1, 800),
    interrupted: fc.boolean(),
  }),
);

const approach = fc.oneof(
  fc.constantFrom('top' as const, 'sides' as const, 'around' as const),
  uncertain(1, 89).map((slant) => ({ slant })),
  uncertain(91, 150).map((undercut) => ({ undercut })),
);

const part: fc.Arbitrary<Part> = fc
  .record({
    name: fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
      .map((name) => name.trim())
      .filter((name) => name !== '' && !/[\p{Cc}\u2028\u2029]/u.test(name)),
    shape: oneOf('block', 'round'),
    size: fc.tuple(length, length, length),
    diameter: length,
    length,
    stands: oneOf('upright'),
    material: fc.constantFrom(...MATERIAL_IDS, 'unknown' as const),
    mass: uncertain(1, 500),
    fill: uncertain(0.05, 1),
    approaches: fc.oneof(
      fc.constant('unknown' as const),
      fc.uniqueArray(approach, { minLength: 1, maxLength: 5, selector: (each) => JSON.stringify(each) }),
    ),
    bottom: fc.constantFrom(true, false, 'unknown' as const),
    motion: oneOf('positional', 'simultaneous', 'surfaces'),
    depthTop: uncertain(0, 100),
    tolerance: uncertain(0.001, 1).map((value) => (value === 0 ? 1 : value)),
    holding: fc.record({
      by: oneOf('fixture', 'vise', 'chuck', 'collet'),
      diameter: uncertain(0, 300),
      height: uncertain(0, 200),
      mass: uncertain(0, 50),
    }),
    eccentricity: uncertain(0, 100),
    cut,
    contourCut: cut,
    drill: fc.oneof(
      fc.constant(null),
      fc.record({ diameter: uncertain(1, 50), feed: uncertain(1, 5), offset: uncertain(0, 300) }),
    ),
    must: fc.boolean(),
  })
  .map((drawn) => {
    const { size, diameter, length: long } = blankPart('');
    if (drawn.shape === 'block') return { ...blankPart(''), ...drawn, diameter, length: long };
    return drawn.shape === 'round' ? { ...blankPart(''), ...drawn, size } : { ...blankPart(''), ...drawn };
  });

/** Some of a list of assumptions, each within its range; none of them: the group is not there. */
const someOf = (list: Readonly<Record<string, Assumption>>, most: number) =>
  fc
    .subarray(Object.keys(list), { maxLength: most })
    .chain((names) =>
      fc.record(
        Object.fromEntries(
          names.map((name) => [name, number(list[name]?.range[0] ?? 0, list[name]?.range[1] ?? 0)]),
        ),
      ),
    );

const assume: fc.Arbitrary<AssumptionOverrides> = fc
  .record({
    flat: someOf(ASSUMPTIONS, 5),
    swapMinutes: someOf(ASSUMPTION_GROUPS.swapMinutes, 3),
    handLift: someOf(ASSUMPTION_GROUPS.handLift, 3),
    coupling: fc.option(fc.constantFrom(...COUPLINGS), { nil: undefined }),
  })
  .map(({ flat, swapMinutes, handLift, coupling }) => {
    const hand = { ...handLift, ...(coupling === undefined ? {} : { coupling }) };
    return {
      ...flat,
      ...(Object.keys(swapMinutes).length === 0 ? {} : { swapMinutes }),
      ...(Object.keys(hand).length === 0 ? {} : { handLift: hand }),
    };
  });

const answers: fc.Arbitrary<Answers> = fc
  .record({
    parts: fc.uniqueArray(part, {
      minLength: 1,
      maxLength: 4,
      selector: ({ name }) => name.normalize('NFKC').toLowerCase(),
    }),
    currency: fc.constantFrom('EUR', 'unknown'),
    ceiling: length,
    budget: uncertain(0, 1e6),
    matters: fc.shuffledSubarray([...MEASURES], { minLength: MEASURES.length }),
    assume,
  })
  .map(({ ceiling, budget, ...drawn }) => {
    const blank = blankAnswers('EUR');
    return { ...blank, ...drawn, shop: { ...blank.shop, ceiling }, money: { ...blank.money, budget } };
  });

describe('answers written to a file', () => {
  test.each(['mm', 'inch'] as const)(
    'in %s read back as the same answers, and write the same text again',
    (units) => {
      fc.assert(
        fc.property(answers, (given) => {
          const { text } = answersToFile(given, { units });
          const back = readBack(text);
          expect(back).toEqual(given);
          expect(answersToFile(back, { units }).text).toBe(text);
        }),
        { numRuns: 200 },
      );
    },
  );

  test('the data is what the text says', () => {
    fc.assert(
      fc.property(answers, (given) => {
        const { data } = answersToFile(given, { units: 'inch' });
        expect(readBack(JSON.stringify(data))).toEqual(given);
      }),
      { numRuns: 50 },
    );
  });

  test('what is neat in inches is written in inches, what is not with its unit', () => {
    const given = { ...blankAnswers('EUR'), parts: [{ ...blankPart('A'), depthTop: 88.9, depthSide: 30 }] };
    const { text } = answersToFile(given, { units: 'inch' });
    expect(text).toContain('depthTop: 3.5\n');
    expect(text).toContain('depthSide: 30 mm\n');
  });

  test('what is not known is there to be filled in; a section of which nothing is known is left out', () => {
    const { text } = answersToFile({ ...blankAnswers('EUR'), parts: [blankPart('A')] }, { units: 'mm' });
    expect(text).toContain('material: unknown\n');
    expect(text).not.toContain('money:');
    expect(readBack(text)).toEqual({ ...blankAnswers('EUR'), parts: [blankPart('A')] });
  });

  test('copied parts are written out, not by reference', () => {
    const copied = { ...blankPart('A'), approaches: ['top', { slant: 35 }] as const };
    const { text } = answersToFile(
      { ...blankAnswers('EUR'), parts: [copied, { ...copied, name: 'B' }] },
      { units: 'mm' },
    );
    expect(text).not.toMatch(/[&*]/);
  });
});
