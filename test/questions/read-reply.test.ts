import { describe, expect, test } from 'vitest';
import { QUESTIONS } from '../../src/questions/index.ts';
import type { Question } from '../../src/questions/question.ts';
import { isNotSure, readReply } from '../../src/questions/read-reply.ts';
import { OFFER } from './sample-values.ts';

function question(id: string): Question {
  const found = QUESTIONS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
}

const read = (id: string, text: string, units: 'mm' | 'inch' = 'mm') =>
  readReply(question(id).field, text, { units, offer: OFFER });
const value = (id: string, text: string, units: 'mm' | 'inch' = 'mm') => {
  const reading = read(id, text, units);
  return reading.ok ? reading.value : reading.why;
};

describe('a choice', () => {
  test.each([
    ['2', 'round'],
    ['round', 'round'],
    ['ROUND ', 'round'],
    ['r', 'round'],
  ])('takes %j', (text, expected) => expect(value('shape', text)).toBe(expected));

  test('takes the label, the id, or the beginning of either', () => {
    expect(value('material', 'carbon steel')).toBe('steel-carbon');
    expect(value('material', 'steel-carbon')).toBe('steel-carbon');
    expect(value('material', 'tit')).toBe('titanium');
    expect(value('material', 'ductile')).toBe('iron-ductile');
    expect(value('loading', 'hand')).toBe('by-hand');
  });

  test('says which two words a beginning can mean', () => {
    expect(value('material', 'alu')).toContain('can be wrought aluminum or cast aluminum');
  });

  test.each(['0', '3', 'cube', '-1', '1.5'])('refuses %j and says what can be typed', (text) => {
    expect(value('shape', text)).toMatch(/type a number from 1 to 2, or a word such as block, round/);
  });
});

describe('several choices', () => {
  test.each([
    ['1,3', ['top', 'around']],
    ['top and sides', ['top', 'sides']],
    ['sl top', ['slant', 'top']],
    ['1; 1; top', ['top']],
  ])('takes %j', (text, expected) => expect(value('approaches', text)).toEqual(expected));

  test('refuses all of it where one word is wrong', () => {
    expect(value('approaches', 'top, bottom')).toContain('"bottom" is none of them');
  });

  test('an order goes on with what was not named', () => {
    expect(value('matters', 'price, 1')).toEqual([
      'price',
      'coverage',
      'viseStations',
      'payback',
      'floorArea',
      'swapHours',
      'margin',
    ]);
  });
});

describe('a quantity', () => {
  test.each([
    ['30', 30],
    ['30 mm', 30],
    ['3 1/2 in', 88.9],
    ['12,5', 12.5],
    ['20 to 40', [20, 40]],
    ['between 1 and 2 in', [25.4, 50.8]],
    ['40 to 40', 40],
  ])('takes %j', (text, expected) => expect(value('depth-top', text)).toEqual(expected));

  test('a bare number is in the units that were chosen', () => {
    expect(value('depth-top', '3 1/2', 'inch')).toBe(88.9);
    expect(value('fixture-mass', '10', 'inch')).toBe(4.5359237);
    expect(value('cycle-minutes', '10', 'inch')).toBe(10);
  });

  test.each([
    ['deep', '"deep" is no number, expected a length in mm'],
    ['12 furlong', '"furlong" is no unit of length'],
    ['1,500', 'can be 1500 or 1.5'],
    ['-3', '-3 mm is out of range, expected at least 0 mm'],
    ['40 to 20', 'runs the wrong way'],
    ['1/0', 'divides by zero'],
    ['30-35', '"30-35" is no number: for a range type "30 to 35", or "not sure".'],
    ['1 1/4–2 in', 'for a range type "1 1/4 to 2 in"'],
    ['thirty-five', '"thirty-five" is no number, expected a length'],
  ])('says what is wrong with %j', (text, sentence) => {
    expect(value('depth-top', text)).toContain(sentence);
  });

  test('asks whether a share of more than 1 is meant in percent', () => {
    expect(value('interest', '6')).toContain('(did you mean "6 %"?)');
    expect(value('interest', '600')).not.toContain('did you mean');
  });

  test('a count is whole where only whole ones make sense', () => {
    expect(value('vises-wanted', '1.5')).toContain('no whole number');
    expect(value('vises-wanted', '2')).toBe(2);
  });
});

describe('several quantities', () => {
  test.each([
    ['90 x 60 x 55', [90, 60, 55]],
    ['90x60x55', [90, 60, 55]],
    ['90 by 60 by 55 mm', [90, 60, 55]],
    ['90 60 55', [90, 60, 55]],
    ['90, 60, 55', [90, 60, 55]],
    ['90; 60; 55', [90, 60, 55]],
    ['3.5 x 2 x 1 1/2 in', [88.9, 50.8, 38.1]],
    ['3.5" x 2" x 38.1 mm', [88.9, 50.8, 38.1]],
    ['90 x not sure x 50 to 60', [90, 'unknown', [50, 60]]],
    ['90 X 60 * 55', [90, 60, 55]],
  ])('takes %j', (text, expected) => expect(value('size', text)).toEqual(expected));

  test('points to how a range is written', () => {
    expect(value('size', '90 x 60 x 50-55')).toContain('for a range type "50 to 55"');
  });

  test('says how many numbers there should be', () => {
    expect(value('size', '90 x 60')).toContain('That is 2 numbers: type length x width x height');
    expect(value('size', '90')).toContain('That is one number');
    expect(value('size', 'big')).toContain('"big" is no number: type length x width x height');
  });

  test('takes any number of angles', () => {
    expect(value('slant', '35')).toEqual([35]);
    expect(value('slant', '30, 45 and 60')).toEqual([30, 45, 60]);
    expect(value('slant', '95')).toContain('out of range');
  });
});

describe('words', () => {
  test('quotation marks around a name are no part of it', () => {
    expect(value('name', ' "review" ')).toBe('review');
    expect(value('name', 'Gate 3/4"')).toBe('Gate 3/4"');
  });

  test('a name that is too long is refused', () => {
    expect(value('name', 'x'.repeat(61))).toContain('longer than 60 characters');
  });

  test.each([
    'not sure',
    'Not Sure.',
    'unsure',
    "don't know",
    'don’t know',
    'unknown',
    'I dont know',
    'dunno',
    'No clue!',
  ])('%j is not sure', (text) => {
    expect(isNotSure(text)).toBe(true);
  });

  test.each(['"not sure"', 'not', 'sure', 'no'])('%j is something else', (text) => {
    expect(isNotSure(text)).toBe(false);
  });

  test.each([
    ['y', true],
    ['No', false],
  ])('%j is yes or no', (text, expected) => expect(value('bottom', text)).toBe(expected));

  test('anything else is neither', () =>
    expect(value('bottom', 'maybe')).toContain('type yes, no, or "not sure"'));
});

test('no reply leaves without a sentence that says what is accepted', () => {
  for (const { field, id } of QUESTIONS) {
    for (const text of ['???', '\u0000', '💥', '1 x 2 x x', '[]', '{"a":1}', '99999999999999999999']) {
      const reading = readReply(field, text, { units: 'mm', offer: OFFER });
      if (!reading.ok) expect(reading.why, `${id}: ${text}`).toMatch(/^[A-Z"0-9-].*[.]$/);
    }
  }
});
