import { expect, test } from 'vitest';
import { keptRuns, keptRunsText, runKey, runOf } from '../../../src/teaching/lessons/kept-runs.ts';
import { LESSON_START } from '../../../src/teaching/lessons/run-lesson.ts';

const RUN = {
  ...LESSON_START,
  index: 2,
  hints: 1,
  scores: [10, 4],
  taken: [null, { answer: '100', hints: 1, wrong: 0 }],
};

test('what is kept is read again', () => {
  expect(keptRuns(keptRunsText({ reach: RUN, 'part-size': LESSON_START }))).toEqual({
    reach: RUN,
    'part-size': LESSON_START,
  });
});

test.each([
  '',
  '{',
  '[]',
  '{"format":"other"}',
  '{"format":"fivesides-lesson-runs/1","runs":{"a":{"index":-1}}}',
])('what is no such file holds nothing: %s', (text) => {
  expect(keptRuns(text)).toBeNull();
});

test('a run that was kept before steps were written down is gone on with', () => {
  const { taken: _, feedback: __, ...old } = RUN;
  const text = JSON.stringify({ format: 'fivesides-lesson-runs/1', runs: { reach: old } });
  expect(keptRuns(text)).toEqual({ reach: { ...RUN, taken: [] } });
});

test.each([
  ['reach', undefined],
  ['/home/a b/own.yaml', 'Bench 4'],
] as const)('%s of %s is found again', (lesson, learner) => {
  expect(runOf(runKey(lesson, learner))).toEqual({ lesson, learner: learner ?? null });
});
