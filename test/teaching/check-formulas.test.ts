import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/rules/checks/index.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import { CHECK_FORMULAS } from '../../src/teaching/checks/index.ts';
import { exampleWorld, judgeExample } from '../../src/teaching/examples/example-world.ts';
import { printedFormula, valuesOf } from '../../src/teaching/formula/formula-source.ts';
import { workOut } from '../../src/teaching/formula/work-out.ts';
import { writeFormula } from '../../src/teaching/formula/write-formula.ts';
import { expectClose } from '../close-to.ts';
import { byMathjs } from './by-mathjs.ts';

const middle = ({ low, high }: { low: number; high: number }): number => (low + high) / 2;

/** The examples of a check in which its own formula decides, with all numbers known. */
const workedExamples = (check: Check) =>
  check.examples.flatMap((example) => {
    const outcome = judgeExample(check, example.given);
    const { comparison, of } = outcome;
    if (comparison === null || outcome.verdict === 'open') return [];
    const source = CHECK_FORMULAS[check.id]({ of, comparison, family: exampleWorld(example.given).part });
    const values = valuesOf(source, of);
    if (values === null) return [];
    const formula = printedFormula(source, of, { sense: check.sense, unit: comparison.unit ?? check.unit });
    return [{ example, outcome, formula, values }];
  });

describe.each(CHECKS.map((check) => [check.id, check] as const))('%s', (_id, check) => {
  const worked = workedExamples(check);

  test('has an example that can be worked out', () => {
    expect(worked.length).toBeGreaterThan(1);
  });

  test('has no digits in its words, and no letter that reads as one by itself', () => {
    const formulas = worked.map(({ formula }) => formula);
    const words = formulas.flatMap(({ steps, definitions }) =>
      [...steps, ...definitions].map((each) => each.words),
    );
    expect(words.filter((text) => /\d/.test(text))).toEqual([]);
    const names = formulas.flatMap(({ symbols, steps }) => [
      ...symbols.map(({ symbol }) => symbol),
      ...steps.map(({ gives }) => gives),
    ]);
    expect(names.filter((name) => /^[lO]\d*$/.test(name))).toEqual([]);
  });

  test.each(worked.map((each) => [each.example.what, each] as const))(
    'comes to the same by its printed formula: %s',
    (_what, { outcome, formula, values }) => {
      const { need, have } = workOut(formula, values);
      expectClose(need, middle(outcome.need), { percent: 1e-7 });
      expectClose(have, middle(outcome.have), { percent: 1e-7 });
    },
  );

  test.each(worked.map((each) => [each.example.what, each] as const))(
    'comes to the same with another program, as it is printed: %s',
    (_what, { outcome, formula, values }) => {
      const printed = {
        ...formula,
        definitions: formula.definitions.map((each) => ({ ...each, formula: writeFormula(each.formula) })),
        steps: formula.steps.map((each) => ({ ...each, formula: writeFormula(each.formula) })),
      };
      const { need, have } = byMathjs(printed, values);
      expectClose(need, middle(outcome.need), { percent: 1e-7 });
      expectClose(have, middle(outcome.have), { percent: 1e-7 });
    },
  );
});
