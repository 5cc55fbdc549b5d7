import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';
import { jsonReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from '../rules/example-shop.ts';
import { anyMachine, anyPart, anyRotary } from './random-shop.ts';

/** Written to a file in one unit and read back. */
function through(answers: Answers, units: 'mm' | 'inch'): Answers {
  const { text } = answersToFile(answers, { units });
  const reading = readAnswers('answers.yaml', text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value.answers;
}

/** What people write has a few decimals; all of these survive the way through inches. */
const rounded = (tree: unknown): unknown => {
  if (typeof tree === 'number') return Math.round(tree * 1000) / 1000;
  if (Array.isArray(tree)) return tree.map(rounded);
  if (typeof tree !== 'object' || tree === null) return tree;
  return Object.fromEntries(Object.entries(tree).map(([key, value]) => [key, rounded(value)]));
};

/** Fields that the shape does not ask for are left out, as in a file. */
function asWritten(part: Part): Part {
  const unknown = 'unknown' as const;
  return part.shape === 'round'
    ? { ...part, size: [unknown, unknown, unknown] }
    : { ...part, diameter: unknown, length: unknown, stands: 'upright' };
}

test('the same answers in inches and in millimeters give the same decision, to the byte', () => {
  let decided = 0;
  fc.assert(
    fc.property(anyPart, anyRotary, anyMachine, (part, rotary, machine) => {
      const parts = [rounded(asWritten(part)) as Part];
      const answers: Answers = { ...EXAMPLE_ANSWERS, parts };
      const catalog = { ...EXAMPLE_CATALOG, rotaries: [rotary], machines: [machine] };
      const [metric, inches] = [through(answers, 'mm'), through(answers, 'inch')];
      expect(inches).toEqual(metric);
      expect(jsonReport(decide(inches, catalog, { all: true }))).toBe(
        jsonReport(decide(metric, catalog, { all: true })),
      );
      decided += 1;
    }),
    { numRuns: 60, seed: 20260105 },
  );
  expect(decided).toBe(60);
});
