import { describe, expect, test } from 'vitest';
import { feedbackLines } from '../../../src/teaching/lessons/lesson-words.ts';
import {
  FULL_POINTS,
  LESSON_START,
  type LessonRun,
  runLesson,
  scoreOf,
} from '../../../src/teaching/lessons/run-lesson.ts';
import { readyLesson } from './lesson-fixture.ts';

const ready = readyLesson('part-size');
const LOOK = { width: 200, ascii: false, units: 'mm' } as const;

/** What is typed, one after the other. */
function typed(...lines: readonly string[]): LessonRun {
  return lines.reduce((run, text) => {
    if (text === 'hint' || text === 'reveal' || text === 'next') return runLesson(ready, run, { type: text });
    return runLesson(ready, run, { type: 'predict', text, units: 'mm' });
  }, LESSON_START);
}

describe('points', () => {
  test('all of them at once', () => {
    expect(scoreOf(typed('100'))).toEqual({ points: FULL_POINTS, of: FULL_POINTS });
  });
  test('a hint and a wrong one cost', () => {
    expect(scoreOf(typed('hint', '90', '100')).points).toBe(4);
  });
  test('one is left, however many', () => {
    expect(scoreOf(typed('90', '91', '92', '93', '94', '100')).points).toBe(1);
  });
  test('none where it is revealed', () => {
    expect(scoreOf(typed('reveal'))).toEqual({ points: 0, of: FULL_POINTS });
  });
});

describe('what is typed', () => {
  test.each(['100', '100 mm', '10 cm', '3.937 in', '100.9', '99.1'])(
    '%s is right: one percent is allowed',
    (text) => {
      expect(typed(text).phase).toBe('revealed');
    },
  );
  test.each(['101.1', '98.9'])('%s is not', (text) => {
    expect(typed(text).phase).toBe('predict');
  });
  test.each(['', '   ', 'about so', '12 kg', '1 mm 2'])(
    '"%s" costs nothing, and says what is accepted',
    (text) => {
      const run = typed(text);
      expect(run).toMatchObject({ phase: 'predict', wrong: 0, feedback: { kind: 'unreadable' } });
      expect(feedbackLines(ready, run, LOOK).join(' ')).toMatch(/\w{3}/);
    },
  );
  test('a word by its number', () => {
    expect(typed('100', 'next', '190', 'next', '1').phase).toBe('revealed');
  });
});

describe('a wrong number is told', () => {
  test('what it is instead', () => {
    expect(feedbackLines(ready, typed('80'), LOOK)[0]).toContain('That is: length of the part as it stands.');
  });
  test('what would have to be otherwise', () => {
    const line = feedbackLines(ready, typed('120'), LOOK)[0];
    expect(line).toContain('It would be right with this changed alone:');
    expect(line).toMatch(/instead of \d/);
  });
  test('a verdict too: what would bring the check to its line', () => {
    const line = feedbackLines(ready, typed('100', 'next', '190', 'next', 'fails'), LOOK)[0];
    expect(line).toContain('swing 189.8 mm instead of 260 mm');
  });
});

test('hints come one after the other, and end', () => {
  expect(typed('hint').feedback).toMatchObject({ kind: 'hint' });
  expect(typed('hint', 'hint', 'hint')).toMatchObject({ hints: 2, feedback: { kind: 'no hint' } });
});

test('what means nothing where it comes changes nothing', () => {
  expect(typed('next')).toEqual(LESSON_START);
  const revealed = typed('100');
  expect(runLesson(ready, revealed, { type: 'hint' })).toEqual(revealed);
});
