import { expect, test } from 'vitest';
import { CLASS_START } from '../../../src/teaching/lessons/class-run.ts';
import { exerciseName, exerciseNamed } from '../../../src/teaching/lessons/exercise-key.ts';
import { classBegunAt, keptClasses, keptClassesText } from '../../../src/teaching/lessons/kept-classes.ts';
import {
  keptRuns,
  keptRunsText,
  runKey,
  runOf,
  withDays,
  withRun,
} from '../../../src/teaching/lessons/kept-runs.ts';
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

test('a day is written on a step when it comes to its end, and stays', () => {
  const [first, second] = [
    { answer: '100', hints: 0, wrong: 0 },
    { answer: '90', hints: 1, wrong: 0 },
  ];
  const one = { ...LESSON_START, phase: 'revealed' as const, scores: [10], taken: [first] };
  const kept = withDays(one, undefined, '2026-11-26');
  expect(kept.taken).toEqual([{ ...first, on: '2026-11-26' }]);
  const two = { ...one, index: 1, scores: [10, 7], taken: [first, second] };
  expect(withDays(two, kept, '2026-11-27').taken.map((each) => each?.on)).toEqual([
    '2026-11-26',
    '2026-11-27',
  ]);
  // gone through once more
  expect(withDays(one, { ...kept, phase: 'done' }, '2026-12-01').taken[0]?.on).toBe('2026-12-01');
  // nobody wrote it down at the time
  expect(withDays(two, one, '2026-12-01').taken.map((each) => each?.on)).toEqual([undefined, '2026-12-01']);
  expect(keptRuns(keptRunsText({ reach: kept }))?.reach?.taken).toEqual(kept.taken);
});

test('of exercises a thousand are kept, those that were gone through last; lessons stay', () => {
  let kept: Readonly<Record<string, number>> = withRun({}, 'reach', 0);
  for (let seed = 0; seed < 1000; seed += 1)
    kept = withRun(kept, runKey(exerciseName('swing', seed, 1), 'B'), seed);
  kept = withRun(kept, runKey(exerciseName('swing', 0, 1), 'B'), 1);
  kept = withRun(kept, exerciseName('swing', 2000, 1), 2);
  expect(Object.keys(kept)).toHaveLength(1001);
  expect(kept.reach).toBe(0);
  expect(kept[runKey(exerciseName('swing', 0, 1), 'B')]).toBe(1);
  expect(kept[runKey(exerciseName('swing', 1, 1), 'B')]).toBeUndefined();
});

test.each(['reach', '/home/a b/own.yaml', 'practice swing', 'practice swing 17 level x'])(
  '%s is no exercise',
  (name) => {
    expect(exerciseNamed(name)).toBeNull();
  },
);

test('how far a class has come is read again, without what it tried', () => {
  const run = {
    ...CLASS_START,
    index: 1,
    page: 3,
    guesses: { 0: { feedback: { kind: 'right' as const, points: 7 }, wrong: 1, points: 7 } },
    refused: 'no',
  };
  const read = keptClasses(keptClassesText({ reach: run }));
  expect(read?.reach).toEqual({
    ...run,
    guesses: { 0: { feedback: null, wrong: 1, points: 7 } },
    refused: null,
  });
  expect(classBegunAt(read?.reach, 2)).toBe(read?.reach);
  expect(classBegunAt(read?.reach, 1)).toBe(CLASS_START);
  expect(classBegunAt(undefined, 2)).toBe(CLASS_START);
});

test.each([
  '',
  '{',
  '{"format":"fivesides-lesson-runs/1","runs":{}}',
  '{"format":"fivesides-class-runs/1","runs":{"a":{"index":-1}}}',
])('what is no such file of classes holds nothing: %s', (text) => {
  expect(keptClasses(text)).toBeNull();
});
