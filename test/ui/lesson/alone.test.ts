import { describe, expect, test } from 'vitest';
import { ENTER, ESCAPE, LEFT, LessonHand, openedAlone } from './pressing.ts';

const hand = (): LessonHand => new LessonHand(openedAlone('part-size'));

describe('a prediction', () => {
  test('empty, of another unit, wrong, and right in inches', () => {
    const it = hand().press(ENTER);
    expect(it.screen()).toContain('Nothing is predicted yet');
    it.press('12 kg', ENTER);
    expect(it.screen()).toContain('no unit of length');
    // it stays, to be mended
    expect(it.screen()).toContain('❯ 12 kg');
    it.press(ESCAPE, '80', ENTER);
    expect(it.screen()).toContain('Not 80 mm. That is: length of the part as it stands.');
    it.press('3.937 in', ENTER);
    expect(it.screen()).toContain('Right: 7 points.');
    expect(it.kept()).toMatchObject({ index: 0, phase: 'revealed', scores: [7] });
  });
  test('the way says what a wrong one would have been right for', () => {
    const it = hand().press('120', ENTER, '100', ENTER);
    const text = it.screen({ columns: 80, rows: 60 });
    expect(text).toContain('It would be right with this changed alone:');
    expect(text).toContain('D_w = 2·max(R, F/2)');
  });
  test('a space is typed, and turns no page', () => {
    expect(hand().press('3 1/2').screen()).toContain('❯ 3 1/2');
  });
  test('hints stay in sight, and come by a key or by their word', () => {
    const it = hand().press(['ctrl-n'], 'hint', ENTER);
    expect(it.screen()).toContain('Hint: The part is 80 by 60 mm.');
    expect(it.screen()).toContain('Hint: The fixture is 90 mm wide.');
    expect(it.kept()).toMatchObject({ hints: 2 });
  });
  test('letters are typed where a number is, and are keys where words are', () => {
    expect(hand().press('h').requests).toEqual([]);
    const it = hand().press('100', ENTER, ENTER, '190', ENTER, ENTER);
    expect(it.screen()).toContain('❯ holds'.slice(2));
    it.press('4');
    expect(it.ui.mark).toBe(3);
    it.press('1', ENTER);
    expect(it.screen()).toContain('Right: 10 points.');
  });
});

test('an earlier step is read again, and Enter goes forward to where it stood', () => {
  const it = hand().press('100', ENTER, ENTER, LEFT);
  expect(it.screen()).toContain('Step 1 of 5');
  expect(it.screen()).toContain('10 of 10 points.');
  it.press(ENTER);
  expect(it.screen()).toContain('step 2 of 5');
});

test('a run goes on where it was kept', () => {
  const first = hand().press('100', ENTER, ENTER, ['ctrl-n']);
  const again = new LessonHand(openedAlone('part-size', first.kept()));
  expect(again.screen()).toContain('step 2 of 5, 10 of 10 points');
  expect(again.screen()).toContain('Hint: Half the diagonal');
});

test('to its end: points of each step, and what to read next', () => {
  const it = hand().press(
    ['ctrl-r'],
    ENTER,
    '190',
    ENTER,
    ENTER,
    '1',
    ENTER,
    ENTER,
    '1',
    ENTER,
    ENTER,
    '10.2',
    ENTER,
    ENTER,
  );
  const text = it.screen();
  expect(text).toContain('The lesson is at its end: 40 of 50 points.');
  expect(text).toContain('0 of 10');
  expect(text).toContain('check/swing');
  it.press(ENTER);
  expect(it.screen()).toContain('What it means');
  it.press(ESCAPE);
  expect(it.kept()).toMatchObject({ phase: 'done' });
});

test('the check is explained from the field, and what is typed stays', () => {
  const it = hand().press('10', ['ctrl-y']);
  expect(it.screen()).toContain('What it means');
  it.press(ESCAPE);
  expect(it.screen()).toContain('❯ 10');
});

test('Ctrl-C says where points are kept, and leaves when pressed again', () => {
  const it = hand().press(['ctrl-c']);
  expect(it.screen()).toContain('Saved to /state/lessons.json. Ctrl-C again leaves');
  it.press(['ctrl-c']);
  expect(it.requests).toEqual([{ kind: 'leave', how: 'interrupted' }]);
});
