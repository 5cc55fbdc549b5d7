import { expect } from 'vitest';
import { type LessonRun, type ReadyLesson, runLesson } from '../../../src/teaching/lessons/run-lesson.ts';
import type { StepKey } from '../../../src/teaching/lessons/step-key.ts';

/** What is empty, no answer, or of another kind is refused in words and costs nothing; what is wrong is told; another unit is read. */
export function expectOddAnswersHandled(ready: ReadyLesson, run: LessonRun, key: StepKey): void {
  const after = (text: string) => runLesson(ready, run, { type: 'predict', text, units: 'mm' });
  const ofAnotherKind = key.kind === 'number' && key.unit === 'kg' ? '3 mm' : '3 kg';
  for (const text of ['', '   ', 'no idea', '?', ofAnotherKind]) {
    const { feedback, phase, wrong } = after(text);
    expect([feedback?.kind, phase, wrong], text).toEqual(['unreadable', 'predict', 0]);
  }
  for (const text of wrongOnes(key)) {
    const { feedback, phase, wrong } = after(text);
    expect([feedback?.kind, phase, wrong], text).toEqual(['wrong', 'predict', 1]);
  }
  if (key.kind === 'number' && key.unit === 'mm')
    expect(after(`${key.value / 25.4} in`).feedback?.kind).toBe('right');
}

const wrongOnes = (key: StepKey): readonly string[] =>
  key.kind === 'choice'
    ? key.options.filter((option) => option !== key.value)
    : [String(Number((2 * key.value + 7).toPrecision(6)))];
