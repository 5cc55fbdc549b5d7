import { describe, expect, test } from 'vitest';
import { lessonHead, revealedLines, stepLines } from '../../../src/teaching/lessons/lesson-words.ts';
import { FULL_POINTS, LESSON_START, runLesson, scoreOf } from '../../../src/teaching/lessons/run-lesson.ts';
import { LESSON_NAMES, readyLesson } from './lesson-fixture.ts';

const LOOK = { width: 80, ascii: false, units: 'mm' } as const;

test('there are ten lessons at least', () => {
  expect(LESSON_NAMES.length).toBeGreaterThanOrEqual(10);
});

describe.each(LESSON_NAMES)('%s', (name) => {
  const ready = readyLesson(name);

  test('runs to its end with what comes out, for all of the points', () => {
    let run = LESSON_START;
    for (const key of ready.keys) {
      // as somebody types it who worked it out: six digits
      const text = key.kind === 'choice' ? key.value : String(Number(key.value.toPrecision(6)));
      run = runLesson(ready, run, { type: 'predict', text, units: 'mm' });
      expect(run.feedback).toEqual({ kind: 'right', points: FULL_POINTS });
      run = runLesson(ready, run, { type: 'next' });
    }
    expect(run.phase).toBe('done');
    expect(scoreOf(run)).toEqual({
      points: ready.keys.length * FULL_POINTS,
      of: ready.keys.length * FULL_POINTS,
    });
  });

  test('says each step, and the way of each', () => {
    expect(lessonHead(ready, LOOK).join(' ')).toContain(ready.lesson.title.toUpperCase().slice(0, 20));
    for (const [index, step] of ready.lesson.steps.entries()) {
      const run = { ...LESSON_START, index };
      expect(stepLines(ready, run, LOOK).join(' ')).toContain(step.ask.slice(0, 30));
      expect(revealedLines(ready, run, LOOK).join(' ')).toContain(step.why.slice(0, 30));
      expect([...stepLines(ready, run, LOOK), ...revealedLines(ready, run, LOOK)].join(' ')).not.toMatch(
        /NaN|undefined/,
      );
    }
  });

  test('tells no number that is asked for before it is revealed, unless something that is given is just as large', () => {
    for (const [index, key] of ready.keys.entries()) {
      if (key.kind !== 'number' || key.worked === null) continue;
      const { asked } = ready.lesson.steps[index] ?? {};
      const side =
        asked?.kind === 'number' && asked.side !== 'margin' ? key.worked.formula[asked.side] : null;
      const rows = stepLines(ready, { ...LESSON_START, index }, LOOK).filter((line) =>
        line.startsWith(`${side} `),
      );
      expect(rows).toEqual([]);
    }
  });
});
