import { expect, test } from 'vitest';
import { isBasicFact } from '../../src/questions/basic-facts.ts';
import { blankAnswers } from '../../src/questions/blank-answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import { HEDGED } from '../../src/rules/asking/hedged.ts';
import { takenMeanwhile } from '../../src/session/because.ts';

const RELIED_ON = QUESTIONS.filter(
  (question) =>
    (question.preset !== null || question.unsure.as === 'value') &&
    question.id !== 'units' &&
    !isBasicFact(question, blankAnswers('EUR')),
);

test('whatever is taken for known while nobody is asked is hedged, or said to be taken', () => {
  const taken = RELIED_ON.filter((question) => takenMeanwhile(question) !== null).map(({ id }) => id);
  expect(taken).toEqual([
    'mass',
    'must',
    'interrupted',
    'hand-reach',
    'hand-from',
    'hand-lift',
    'vise-width',
    'vise-length',
    'plate-price',
  ]);
  const hedged = RELIED_ON.filter((question) => takenMeanwhile(question) === null);
  expect(hedged.map(({ id }) => id)).toEqual(['eccentricity', 'drill', 'matters']);
  for (const { path } of hedged) expect(HEDGED).toContain(path);
});

test('what is hedged has a question', () => {
  const paths = new Set(QUESTIONS.map(({ path }) => path));
  for (const path of HEDGED) expect(paths).toContain(path);
});
