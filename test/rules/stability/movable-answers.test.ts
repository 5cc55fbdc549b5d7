import { expect, test } from 'vitest';
import { movableAnswers } from '../../../src/rules/stability/movable-answers.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_PART } from '../example-shop.ts';

const found = (answers: typeof EXAMPLE_ANSWERS, path: string) =>
  movableAnswers(answers).find(({ answer }) => answer === path);

const withPart = (part: Partial<typeof EXAMPLE_PART>) => ({
  ...EXAMPLE_ANSWERS,
  parts: [{ ...EXAMPLE_PART, name: 'Cleat', ...part }],
});

test('every number that was answered is one, by the path that verdicts name it by', () => {
  const answers = withPart({ shape: 'block', size: [90, 60, 55], depthTop: 12 });
  expect(found(answers, 'parts[Cleat].size[1]')).toMatchObject({ at: 60, domain: { low: 30, high: 120 } });
  expect(found(answers, 'parts[Cleat].depthTop')?.keys).toEqual(['answers', 'parts', 0, 'depthTop']);
});

test('what is not known, and what is a range already, is none', () => {
  const answers = withPart({ size: [[80, 90], 'unknown', 55], depthTop: [10, 12] });
  const paths = movableAnswers(answers).map(({ answer }) => answer);
  expect(paths.filter((path) => path.startsWith('parts[Cleat].size'))).toEqual(['parts[Cleat].size[2]']);
  expect(paths.filter((path) => path.startsWith('parts[Cleat].depthTop'))).toEqual([]);
});

test('it is looked for no farther than the question accepts, nor than to half and twice', () => {
  const answers = withPart({ approaches: [{ slant: 60 }], tolerance: 0.1 });
  expect(found(answers, 'parts[Cleat].approaches[0].slant')?.domain).toEqual({ low: 30, high: 89 });
  expect(found(answers, 'parts[Cleat].tolerance')?.domain).toEqual({ low: 0.05, high: 0.2 });
});

test('of an answer of zero all that not sure stands for', () => {
  const answers = withPart({ eccentricity: 0 });
  expect(found(answers, 'parts[Cleat].eccentricity')?.domain).toEqual({ low: 0, high: 200 });
});

test('vises come in whole numbers', () => {
  const answers = { ...EXAMPLE_ANSWERS, work: { ...EXAMPLE_ANSWERS.work, visesWanted: 2 } };
  expect(found(answers, 'work.visesWanted')?.whole).toBe(true);
});
