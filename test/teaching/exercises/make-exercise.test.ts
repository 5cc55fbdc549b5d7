import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { NOT_SURE } from '../../../src/questions/ranges.ts';
import { STAGES } from '../../../src/rules/stages/index.ts';
import { DRAWN_ANSWERS } from '../../../src/teaching/exercises/drawn-answers.ts';
import { makeExercise } from '../../../src/teaching/exercises/make-exercise.ts';
import { seededBy } from '../../../src/teaching/exercises/seeded.ts';
import { demoCatalog } from '../../catalog-demo/demo.ts';
import { drawn, expectSound } from './drawn.ts';

const DRAWN = [693, 984, 'a'];

test('the same seed gives the same exercise', () => {
  expect(drawn('payload', 17, 2)).toEqual(drawn('payload', 17, 2));
});

test('another seed gives another', () => {
  expect(drawn('payload', 18, 2).lesson.answers).not.toEqual(drawn('payload', 17, 2).lesson.answers);
});

test('draws are the same on every computer', () => {
  const draw = seededBy(17, 'swing');
  expect([draw.whole(0, 999), draw.whole(0, 999), draw.oneOf(['a', 'b', 'c'])]).toEqual(DRAWN);
});

test.each(STAGES)('of the stage %s a check is drawn', (stage) => {
  expectSound(drawn(stage, 3, 1));
});

test.each([1, 2, 3] as const)('a whole case at level %i is short, and one check decides it', (level) => {
  const exercise = drawn('whole-case', 5, level);
  expectSound(exercise);
  expect(exercise.lesson.steps.length).toBeGreaterThanOrEqual(6);
  expect(exercise.lesson.steps.length).toBeLessThanOrEqual(9);
});

test('of twenty seeds some hold and some fail', () => {
  const sides = Array.from({ length: 20 }, (_, seed) => drawn('payload', seed, 1).side);
  expect(new Set(sides)).toEqual(new Set(['yes', 'no']));
});

test('answers that are moved lie within what a small shop meets', () => {
  for (const { within, least, most, step } of Object.values(DRAWN_ANSWERS)) {
    expect(least).toBeGreaterThanOrEqual(NOT_SURE[within].low);
    expect(most).toBeLessThanOrEqual(NOT_SURE[within].high);
    expect(Math.abs(least / step - Math.round(least / step))).toBeLessThan(1e-6);
  }
});

test('DEVELOPERS.md says the same of them', () => {
  const text = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');
  const rows = text
    .split('\n')
    .filter((line) => /^\| `[^`]+` \| [\d.]+ to [\d.]+ \S+ \| [\d.]+ \|$/.test(line));
  expect(rows).toEqual(
    Object.values(DRAWN_ANSWERS).map(
      ({ path, least, most, step, unit }) => `| \`${path}\` | ${least} to ${most} ${unit} | ${step} |`,
    ),
  );
});

test('what there is no exercise about is told, with what was probably meant', () => {
  const made = makeExercise('paylod', { seed: 1, level: 1, catalog: demoCatalog() });
  expect(made).toMatchObject({ ok: false, why: expect.stringContaining('did you mean payload?') });
});

test('a catalog that has nothing for it is told', () => {
  const catalog = { ...demoCatalog(), rotaries: [] };
  const made = makeExercise('collet', { seed: 1, level: 1, catalog });
  expect(made).toMatchObject({ ok: false, why: expect.stringContaining('collet') });
});
