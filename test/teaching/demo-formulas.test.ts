import { describe, expect, test } from 'vitest';
import { standingOf } from '../../src/rules/standing.ts';
import { workedOutcome } from '../../src/teaching/examples/worked-check.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';
import { expectClose } from '../close-to.ts';

/** Of so many outcomes each one is worked out: the whole demo is too many, and neighbors are alike. */
const EVERY = 7;

describe.each(['shop', 'shop-school-workshop', 'shop-own-mill'])(
  'in %s the printed formulas come to the numbers of the checks',
  (shop) => {
    const { answers } = demoAnswers(shop);
    const { judged } = standingOf(answers, demoCatalog());
    const outcomes = judged
      .flatMap(({ own, families }) => [
        ...own.map((outcome) => ({ outcome, part: null })),
        ...families.flatMap(({ family, outcomes: all }) =>
          all.map((outcome) => ({
            outcome,
            part: answers.parts.find(({ name }) => name === family.name) ?? null,
          })),
        ),
      ])
      .filter((_, index) => index % EVERY === 0);
    const worked = outcomes.flatMap(({ outcome, part }) => {
      const found = workedOutcome(outcome, part);
      return found === null ? [] : [{ outcome, found }];
    });

    test('for many of them', () => {
      expect(worked.length).toBeGreaterThan(100);
      expect(new Set(worked.map(({ outcome }) => outcome.check.id)).size).toBeGreaterThan(25);
    });

    test('to a billionth', () => {
      for (const { outcome, found } of worked) {
        const { need, have } = outcome;
        if (need.low === need.high) expectClose(found.worked.need, need.low, { percent: 1e-7 });
        if (have.low === have.high) expectClose(found.worked.have, have.low, { percent: 1e-7 });
        expect(found.worked.need).not.toBeNaN();
      }
    });
  },
);
