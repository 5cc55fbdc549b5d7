import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { lessonFrame } from '../../../src/ui/lesson/lesson-frame.ts';
import { textOfRow } from '../../../src/ui/look/row.ts';
import { ENTER, LEFT, LessonHand, openedAlone, openedForClass } from './pressing.ts';

const SIZES = [20, 60, 80, 120].flatMap((columns) => [5, 20, 24, 40].map((rows) => ({ columns, rows })));
/** Before a row of a list stands a pointer, or its room. */
const POINTER_WIDTH = 2;

const LIST = [
  { name: 'reach', title: 'A name 軸 that is long '.repeat(6), reached: 'step 3 of 5, 17 of 20 points' },
];
const alone = (): LessonHand => new LessonHand(openedAlone('moments-and-brakes'));
const shown = (): LessonHand => new LessonHand(openedForClass('moments-and-brakes'));
const SCREENS: readonly (readonly [string, LessonHand])[] = [
  ['the list', new LessonHand(null, LIST)],
  ['a number', alone().press('1', ENTER, ['ctrl-n'])],
  ['words', alone().press(['ctrl-r'], ENTER)],
  ['revealed', alone().press(['ctrl-r'], ENTER, 'r', ENTER, ['ctrl-r'])],
  ['earlier', alone().press(['ctrl-r'], ENTER, LEFT)],
  ['the end', alone().press(['ctrl-r'], ENTER, 'r', ENTER, ['ctrl-r'], ENTER, ['ctrl-r'], ENTER, 'r', ENTER)],
  ['help', alone().press('?')],
  ['explained', alone().press(['ctrl-y'])],
  ['leaving', alone().press(['ctrl-c'])],
  ['class: the title', shown()],
  ['class: given', shown().press('nn  ')],
  ['class: a guess', shown().press(' g1')],
  ['class: what if', shown().press(' i')],
  ['class: another value', shown().press(' i', ENTER, '1')],
  ['class: what comes out', shown().press(' i', ENTER, '100', ENTER)],
  ['class: result', shown().press(['end'], LEFT)],
];

test.each(SCREENS)('%s: rows - 1 rows, none wider than the window', (_, { ui }) => {
  for (const size of SIZES)
    for (const ascii of [false, true]) {
      const drawing = { ascii, color: !ascii, sessionFile: '/a/lessons.json', unsaved: null };
      const rows = lessonFrame(ui, size, drawing);
      expect(rows).toHaveLength(size.rows - 1);
      for (const row of rows) {
        const width = stringWidth(textOfRow(row)) + (row.item === undefined ? 0 : POINTER_WIDTH);
        expect(width, `${size.columns}x${size.rows}: ${textOfRow(row)}`).toBeLessThanOrEqual(size.columns);
      }
    }
});

test('in plain characters nothing else is written', () => {
  for (const [name, { ui }] of SCREENS.slice(1)) {
    const drawing = { ascii: true, color: false, sessionFile: '/a/lessons.json', unsaved: null };
    const text = lessonFrame(ui, { columns: 80, rows: 24 }, drawing).map(textOfRow).join('\n');
    expect(text, name).toMatch(/^[ -~\n]*$/);
  }
});
