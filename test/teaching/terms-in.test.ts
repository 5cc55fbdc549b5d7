import { expect, test } from 'vitest';
import { QUESTIONS } from '../../src/questions/index.ts';
import { termLine, termsIn } from '../../src/teaching/terms-in.ts';

test('words are found as words, in the order in which they are read', () => {
  expect(termsIn('How far above the faceplate does the fixture stand?')).toEqual(['faceplate', 'fixture']);
  expect(termsIn('Faceplates')).toEqual(['faceplate']);
  expect(termsIn('a swinging door')).toEqual([]);
});

test('words of every day are left alone', () => {
  expect(termsIn('what holds it must be open')).toEqual([]);
});

test('a word is told with its meaning', () => {
  expect(termLine('swing')).toBe('swing: The largest circle that turns freely in a rotary.');
});

test('most questions use words that are explained', () => {
  const told = QUESTIONS.filter(({ title }) => termsIn(title).length > 0);
  expect(told.length).toBeGreaterThan(QUESTIONS.length / 4);
});
