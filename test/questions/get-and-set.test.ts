import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { fits } from '../../src/questions/fits.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import type { Question } from '../../src/questions/question.ts';
import { OFFER, valuesOf } from './sample-values.ts';

const withoutDoubles = (list: readonly unknown[]) =>
  list.filter((each, index) => list.findIndex((other) => String(other) === String(each)) === index);

const PARTS = ['Lock gate hinge', 'Valve body'];

/** Answers in which the question applies to the second part. */
function readyFor(question: Question): Answers {
  const blank = { ...blankAnswers('EUR'), parts: PARTS.map((name) => blankPart(name)) };
  const needs: Readonly<Record<string, readonly [string, readonly string[] | string | boolean]>> = {
    slant: ['approaches', ['top', 'slant']],
    undercut: ['approaches', ['undercut']],
  };
  const need =
    question.section === 'cut' && question.id !== 'cut' ? (['cut', 'detailed'] as const) : needs[question.id];
  const [id, value] =
    question.section === 'drill' && question.id !== 'drill' ? (['drill', true] as const) : (need ?? []);
  const first = QUESTIONS.find((each) => each.id === id);
  return first === undefined || value === undefined ? blank : first.set(blank, 1, value);
}

const each = QUESTIONS.map((question) => [question.id, question] as const);

describe('every question', () => {
  test.each(each)('%s gives back what was put in', (id, question) => {
    if (id === 'units') return expect(question.get(blankAnswers('EUR'), 0)).toBe('mm');
    fc.assert(
      fc.property(valuesOf(question.field), (value) => {
        const answers = question.set(readyFor(question), 1, value);
        const back = question.get(answers, 1);
        // an angle that is given twice counts once
        const once = question.field.kind === 'quantities' && question.field.names === null;
        expect(back).toEqual(once && Array.isArray(value) ? withoutDoubles(value) : value);
      }),
      { numRuns: 50, seed: 7 },
    );
  });

  test.each(each)('%s changes nothing but its own answer', (_, question) => {
    const before = readyFor(question);
    const copy = structuredClone(before);
    fc.assert(
      fc.property(valuesOf(question.field), (value) => {
        const after = question.set(before, 1, value);
        expect(before).toEqual(copy);
        expect(after.parts[0]).toEqual(before.parts[0]);
        if (question.of === 'shop') expect(after.parts).toEqual(before.parts);
      }),
      { numRuns: 20, seed: 7 },
    );
  });

  test.each(each)('%s accepts not sure', (_, question) => {
    const value = question.unsure.as === 'value' ? question.unsure.value : 'unknown';
    expect(fits(question.field, value, OFFER)).toBe(true);
    const answers = question.set(readyFor(question), 1, value);
    expect(answers.parts).toHaveLength(2);
    if (question.unsure.as === 'range') {
      const back = question.get(answers, 1);
      expect([back].flat().every((each) => each === 'unknown')).toBe(true);
    }
  });

  test.each(each)('%s refuses what is no answer to it', (_, question) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -1, [], ['nonsense'], ''] as const) {
      expect(() => question.set(readyFor(question), 1, value as never)).toThrow(TypeError);
    }
  });
});
