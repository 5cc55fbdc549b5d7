import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import type { Question, Value } from '../../src/questions/question.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';
import { valuesOf } from './sample-values.ts';

/** What has to be answered first so that the answer is of a kind that the part has. */
const FIRST: Readonly<Record<string, readonly [id: string, value: Value]>> = {
  slant: ['approaches', ['top', 'slant']],
  undercut: ['approaches', ['undercut']],
  size: ['shape', 'block'],
  diameter: ['shape', 'round'],
  length: ['shape', 'round'],
  stands: ['shape', 'round'],
};

function readyFor({ id, section }: Question): Answers {
  const blank = { ...blankAnswers('EUR'), parts: [blankPart('Lock gate hinge')] };
  const detail = section === 'cut' && id !== 'cut' ? (['cut', 'detailed'] as const) : undefined;
  const drilled = section === 'drill' && id !== 'drill' ? (['drill', true] as const) : undefined;
  const [first, value] = FIRST[id] ?? detail ?? drilled ?? [];
  const question = QUESTIONS.find((each) => each.id === first);
  return question === undefined || value === undefined ? blank : question.set(blank, 0, value);
}

const asked = QUESTIONS.filter(({ id }) => id !== 'units').map(
  (question) => [question.id, question] as const,
);

describe('whatever the interview takes, a file takes too', () => {
  test.each(asked)('%s', (_, question) => {
    fc.assert(
      fc.property(
        valuesOf(question.field),
        fc.constantFrom('mm' as const, 'inch' as const),
        (value, units) => {
          const answers = question.set(readyFor(question), 0, value);
          const { text } = answersToFile(answers, { units });
          const read = readAnswers('a.yaml', text);
          expect(read.ok ? [] : read.problems.map(describeProblem)).toEqual([]);
          if (read.ok) expect(read.value.answers).toEqual(answers);
        },
      ),
      { numRuns: 40, seed: 11 },
    );
  });
});
