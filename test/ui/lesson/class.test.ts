import { describe, expect, test } from 'vitest';
import { ENTER, ESCAPE, LEFT, LessonHand, openedForClass } from './pressing.ts';

const hand = (): LessonHand => new LessonHand(openedForClass('part-size'));

test('one key shows one thing after the other, and the other takes it back', () => {
  const it = hand();
  const seen = [
    'FROM THE SIZE OF A PART TO THE ENVELOPE',
    'STEP 1 OF 5',
    'diameter of the fixture',
    'Hint: The part is 80',
    'Hint: The fixture is 90',
    'r = √(a² + b²)/2',
    '√(80² + 60²)/2',
  ];
  for (const words of seen) {
    expect(it.screen()).toContain(words);
    it.press(' ');
  }
  expect(it.screen()).toContain('R = r + e');
  expect(it.screen()).not.toContain('√(80² + 60²)/2');
  it.press(LEFT);
  expect(it.screen()).toContain('= 50 mm');
});

test('every page to the end; without a guess nothing is counted', () => {
  const it = hand();
  let pages = 0;
  while (!it.screen().includes('The lesson is at its end') && pages < 200) {
    it.press(ENTER);
    pages += 1;
  }
  expect(pages).toBeGreaterThan(40);
  expect(it.screen()).not.toContain('points');
  expect(new Set(it.requests.map(({ kind }) => kind))).toEqual(new Set(['keep class']));
});

test('a guess of the room is counted, before the way is shown', () => {
  const it = hand().press(' ', 'g', '80', ENTER);
  expect(it.screen()).toContain('Not 80 mm.');
  it.press('g', '100', ENTER);
  expect(it.screen()).toContain('Right: 7 points.');
  it.press('nnnnn');
  expect(it.screen()).toContain('The room has 7 of 10 points');
});

test('no guess once the way is shown', () => {
  const it = hand().press(' ', ['end'], LEFT, 'g', '100', ENTER);
  expect(it.screen()).toContain('The way is shown already');
});

describe('what if', () => {
  const tried = (typed: string): LessonHand => hand().press(' ', 'i', 'fixture', ENTER, typed, ENTER);
  test('the engine decides anew: before, and with it', () => {
    // 2·max(√(80² + 60²)/2, 150/2) = 150
    const text = tried('150').screen();
    expect(text).toContain('What if: diameter of the fixture 150 mm instead of 90 mm');
    expect(text).toMatch(/Needed +100 mm +150 mm/);
    expect(text).toMatch(/Margin +160 mm +110 mm/);
    expect(text).toMatch(/Verdict +✓ holds +✓ holds/);
  });
  test('in inches, and so far that it fails', () => {
    expect(tried('11 in').screen()).toMatch(/Verdict +✓ holds +✗ fails/);
  });
  test('the pages after it show it, and d drops it', () => {
    const it = tried('150').press(ENTER, ['end'], LEFT);
    expect(it.screen()).toContain('It is 150 mm.');
    it.press('d');
    expect(it.screen()).toContain('It is 100 mm.');
  });
  test('a value of the catalog', () => {
    const it = hand().press(' ', 'i', 'swing', ENTER, '95', ENTER);
    expect(it.screen()).toMatch(/There is +260 mm +95 mm/);
    expect(it.screen()).toMatch(/✗ fails/);
  });
  test.each([
    ['', 'Nothing is written'],
    ['12 kg', 'no unit of length'],
    ['-5', '-5 is not accepted: expected'],
  ])('"%s" is refused, and stays to be mended', (typed, why) => {
    const it = tried(typed);
    expect(it.screen()).toContain(why);
    it.press(ESCAPE, ESCAPE, ESCAPE);
    expect(it.screen()).toContain('STEP 1 OF 5');
  });
});
