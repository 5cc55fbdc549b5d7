import { expect, test } from 'vitest';
import { formatQuantity } from '../../src/quantities/format-quantity.ts';
import { assumed } from '../../src/questions/assumptions.ts';
import { blankAnswers } from '../../src/questions/blank-answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';

const ASSUME = assumed({});

/** What the rules take for an answer that nobody gives, where that is a named assumption. */
const TAKEN: Readonly<Record<string, readonly [value: number, unit: string]>> = {
  'hand-reach': [ASSUME.handLift.reach, 'mm'],
  'hand-from': [ASSUME.handLift.from, 'mm'],
  'hand-lift': [ASSUME.handLift.lift, 'mm'],
  'vise-width': [ASSUME.viseWidth, 'mm'],
  'vise-length': [ASSUME.viseLength, 'mm'],
  'plate-price': [ASSUME.platePrice, 'money'],
};

test.each(Object.entries(TAKEN))('%s says which assumption stands in for it', (id, [value, unit]) => {
  const question = QUESTIONS.find((each) => each.id === id);
  const metric = formatQuantity(value, unit).trim();
  expect(question?.preset?.words).toContain(metric);
  expect(question?.preset?.words).toContain('an assumption');
  expect(question?.unsure).toMatchObject({ as: 'computed', words: question?.preset?.words });
  expect(question?.get(blankAnswers('EUR'), 0)).toBe('unknown');
});

test.each(QUESTIONS.map((question) => [question.id, question] as const))(
  '%s is understood by itself, since any question may come next',
  (_id, question) => {
    const asked = question.ask({ part: 'Hinge', units: 'inch', currency: 'EUR' });
    expect(asked).not.toMatch(
      /\b(that (cut|cutter|drill|hole|supply)|these (vises|setups)|(?<!Name all of )them|(?<!all )of it|from there|is that)\b/,
    );
    expect(asked).not.toMatch(/meters a minute|square meter/);
  },
);
