import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import type { Question } from '../../src/questions/question.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';
import type { Given, GivenAnswers } from '../../src/session/kept.ts';
import { valuesOf } from '../questions/sample-values.ts';
import { answers, oneBlock, WORLD } from './talk.ts';

/** What the file of these answers says, read again. */
function throughFile(from: ReturnType<typeof answers>, units: 'mm' | 'inch') {
  const reading = readAnswers('answers.yaml', answersToFile(from, { units }).text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value.answers;
}

const given = (question: Question): fc.Arbitrary<Given | undefined> =>
  fc.oneof(
    { weight: 4, arbitrary: valuesOf(question.field).map((value): Given => ({ from: 'typed', value })) },
    { weight: 1, arbitrary: fc.constant<Given>({ from: 'not sure' }) },
    { weight: 1, arbitrary: fc.constant(undefined) },
  );

/** Any answers to all questions of one kind, some not sure, some open. */
const givenTo = (of: Question['of']): fc.Arbitrary<GivenAnswers> =>
  fc
    .tuple(
      ...QUESTIONS.filter((question) => question.of === of).map((question) =>
        given(question).map((each) => [question.id, each] as const),
      ),
    )
    .map((pairs) => Object.fromEntries(pairs.filter(([, each]) => each !== undefined)) as GivenAnswers);

describe('answers of an interview', () => {
  test('are an answers file that says the same, in millimeters and in inches', () => {
    const talk = oneBlock();
    expect(throughFile(answers(talk), 'mm')).toEqual(answers(talk));
    expect(throughFile(answers(talk), 'inch')).toEqual(answers(talk));
  });

  test('whatever they are: the interview accepts nothing that an answers file would not', () => {
    fc.assert(
      fc.property(
        givenTo('shop'),
        fc.array(givenTo('part'), { minLength: 1, maxLength: 3 }),
        (shop, parts) => {
          const named = parts.map((part, index) => ({
            ...part,
            name: { from: 'typed', value: `Part ${index}` } as const,
          }));
          const survey = WORLD.survey({ shop, parts: named });
          expect(throughFile(survey.answers, 'mm')).toEqual(survey.answers);
        },
      ),
      { numRuns: 200, seed: 11 },
    );
  });

  test('before anything is said are what an empty answers file says', () => {
    const reading = readAnswers(
      'empty.yaml',
      'format: fivesides-answers/1\nunits: mm\nparts: [{ name: Hinge }]\n',
    );
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    expect({ ...blankAnswers('unknown'), parts: [blankPart('Hinge')] }).toEqual(reading.value.answers);
  });
});
