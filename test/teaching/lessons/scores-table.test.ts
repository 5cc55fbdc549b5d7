import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { exerciseName } from '../../../src/teaching/lessons/exercise-key.ts';
import { runKey, withDays } from '../../../src/teaching/lessons/kept-runs.ts';
import { LESSON_START, type LessonEvent, runLesson } from '../../../src/teaching/lessons/run-lesson.ts';
import { scoresTable } from '../../../src/teaching/lessons/scores-table.ts';
import { readyLesson } from './lesson-fixture.ts';

const ready = readyLesson('part-size');
const predict = (text: string): LessonEvent => ({ type: 'predict', text, units: 'mm' });
const after = (...events: readonly LessonEvent[]) =>
  events.reduce((run, event) => runLesson(ready, run, event), LESSON_START);
const rowsOf = (text: string): readonly (readonly string[])[] => parse(text, { bom: true });

const HEAD = ['learner', 'lesson', 'seed', 'date', 'step', 'answer', 'hints', 'wrong', 'points', 'of'];

test('each step that is at its end is a row', () => {
  const run = after(
    { type: 'hint' },
    predict('80'),
    predict(' 100 mm '),
    { type: 'next' },
    { type: 'reveal' },
  );
  expect(rowsOf(scoresTable({ [runKey('part-size', 'Bench 4')]: run }))).toEqual([
    HEAD,
    ['Bench 4', 'part-size', '', '', '1', '100 mm', '1', '1', '4', '10'],
    ['Bench 4', 'part-size', '', '', '2', '', '0', '0', '0', '10'],
  ]);
});

test('learner by learner, lesson by lesson; who has no name first', () => {
  const run = after(predict('100'));
  const kept = {
    [runKey('reach', 'B')]: run,
    [runKey('reach')]: run,
    [runKey('part-size', 'B')]: run,
    [runKey('reach', 'A, B')]: run,
  };
  const rows = rowsOf(scoresTable(kept)).slice(1);
  expect(rows.map(([learner, lesson]) => [learner, lesson])).toEqual([
    ['', 'reach'],
    ['A, B', 'reach'],
    ['B', 'part-size'],
    ['B', 'reach'],
  ]);
});

test('what was not written down yet is left empty', () => {
  const old = { ...LESSON_START, index: 2, scores: [7, 10] };
  expect(rowsOf(scoresTable({ reach: old }))[1]).toEqual(['', 'reach', '', '', '1', '', '', '', '7', '10']);
  const goneOn = runLesson(ready, { ...LESSON_START, index: 1, scores: [7] }, { type: 'reveal' });
  expect(goneOn.taken).toEqual([null, { answer: null, hints: 0, wrong: 0 }]);
});

test('a name that a spreadsheet would work out is kept from it', () => {
  const text = scoresTable({ [runKey('reach', '=1+1')]: after(predict('100')) });
  expect(rowsOf(text)[1]?.[0]).toBe("'=1+1");
});

test('an exercise has its seed beside it, and a step the day on which it came to its end', () => {
  const run = withDays(after(predict('100')), undefined, '2026-11-26');
  const kept = { [runKey(exerciseName('swing', 17, 2), 'B')]: run };
  expect(rowsOf(scoresTable(kept))[1]?.slice(0, 5)).toEqual([
    'B',
    'practice swing level 2',
    '17',
    '2026-11-26',
    '1',
  ]);
});
