import { describe, expect, test } from 'vitest';
import { describeProblem } from '../../../src/documents/problem.ts';
import { readLesson } from '../../../src/teaching/lessons/read-lesson.ts';
import { prepareLesson } from '../../../src/teaching/lessons/step-key.ts';
import { demoCatalog } from '../../catalog-demo/demo.ts';
import { demoLesson, lessonText } from './lesson-fixture.ts';

const TEXT = lessonText('part-size');
const problemsOf = (text: string): readonly string[] => {
  const reading = readLesson('own.yaml', text);
  return reading.ok ? [] : reading.problems.map(describeProblem);
};

describe('a lesson that cannot be used is told where', () => {
  test.each([
    ['a check that there is none', 'check: swing,', 'check: swin,', 'did you mean "swing"?'],
    ['a key that there is none', 'title:', 'titel:', 'titel'],
    ['a side that there is none', 'side: need', 'side: needs', 'did you mean "need"?'],
    ['an answer that is none', 'shape: block', 'shape: cube', 'expected block'],
    [
      'nothing that is asked for',
      'number: { check: swing, part: Mooring cleat, side: need }',
      'tolerance: 2',
      'asks for nothing',
    ],
    ['another format', 'fivesides-lesson/1', 'fivesides-lesson/9', 'fivesides-lesson/1'],
  ])('%s', (_what, right, wrong, told) => {
    const problems = problemsOf(TEXT.replace(right, wrong));
    expect(problems.join('\n')).toContain(told);
    expect(problems[0]).toMatch(/^own\.yaml:\d+:\d+: /);
  });

  test('no file', () => {
    expect(readLesson('/nowhere/lesson.yaml').ok).toBe(false);
  });
});

describe('a step that cannot be worked out is named', () => {
  const lesson = demoLesson('part-size');
  const faultsOf = (change: object): readonly string[] => {
    const ready = prepareLesson({ ...lesson, ...change }, demoCatalog());
    return ready.ok ? [] : ready.faults;
  };
  test('an arrangement that there is none', () => {
    expect(faultsOf({ on: 'osier+lapwing/nowhere' })[0]).toBe(
      'step 1: there is no arrangement osier+lapwing/nowhere',
    );
  });
  test('a machine that there is none', () => {
    expect(faultsOf({ machines: ['oak'] })).toEqual(['there is no machine oak in the catalog']);
  });
  test('a part that there is none', () => {
    const steps = lesson.steps.map((step) => ({ ...step, asked: { ...step.asked, part: 'Anchor' } }));
    expect(faultsOf({ steps })[0]).toContain('not about Anchor');
  });
});
