import { KEY, pasted } from './harness.ts';

const LETTERS = [...'abcdefghijklmnopqrstuvwxyz'];
const DIGITS = [...'0123456789'];
const SIGNS = [...' /?.,-"', 'é', '軸', '🙂'];
/** Not these: a line end after a return is no key; a stop is drawn apart; what paints anew shows that keys are done with. */
const CONTROLS = [...'abcdefghikmnopqrstuvwxy'].map((letter) =>
  String.fromCharCode(letter.charCodeAt(0) - 96),
);
const MOVES = [
  KEY.up,
  KEY.down,
  KEY.left,
  KEY.right,
  KEY.enter,
  KEY.enter,
  KEY.enter,
  KEY.escape,
  KEY.shiftTab,
];
const EDITS = [KEY.backspace, '\t', '\u001b[H', '\u001b[F', '\u001b[3~', '\u001b[5~', '\u001b[6~'];
/** What terminals send besides: function keys, held modifiers, the mouse, whether the window is looked at. */
const REPORTS = [
  '\u001bOP',
  '\u001b[15~',
  '\u001b[1;5A',
  '\u001b[<0;10;10M',
  '\u001b[M !!',
  '\u001b[I',
  '\u0000',
];
const PASTES = [
  pasted('12,5 mm\r\n30\r\n'),
  pasted('90 x 60 x 55'),
  pasted('1\u001b[31m2\u0007\u001b]0;title\u0007'),
  pasted('Lock gate hinge 軸'.repeat(12)),
  pasted(''),
];
/** What somebody answers who means it, so that the keys get somewhere. */
const ANSWERS = [
  '1\r',
  '2\r',
  KEY.ctrlN,
  KEY.ctrlN,
  '90 x 60 x 55\r',
  '40\r',
  'Hinge\r',
  ' \r',
  'p',
  'g',
  '\u0014',
  '\u0014p1\r\r',
];

const KINDS: readonly (readonly [weight: number, tokens: readonly string[]])[] = [
  [20, LETTERS],
  [8, DIGITS],
  [4, SIGNS],
  [8, CONTROLS],
  [26, MOVES],
  [6, EDITS],
  [3, REPORTS],
  [3, PASTES],
  [22, ANSWERS],
];
const TOTAL = KINDS.reduce((sum, [weight]) => sum + weight, 0);

export const oneOf = <Item>(items: readonly Item[], chance: () => number): Item => {
  const item = items[Math.floor(chance() * items.length)];
  if (item === undefined) throw new RangeError('there is nothing to draw from');
  return item;
};

/** Some key, as a terminal sends it, or a few that belong together. */
export function randomKeys(chance: () => number): string {
  let left = chance() * TOTAL;
  for (const [weight, tokens] of KINDS) {
    left -= weight;
    if (left < 0) return oneOf(tokens, chance);
  }
  return KEY.enter;
}
