import { expect, test } from 'vitest';
import { keptRuns, keptRunsText } from '../../../src/teaching/lessons/kept-runs.ts';
import { LESSON_START } from '../../../src/teaching/lessons/run-lesson.ts';

const RUN = { ...LESSON_START, index: 2, hints: 1, scores: [10, 4] };

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
  expect(keptRuns(text)).toEqual({});
});
