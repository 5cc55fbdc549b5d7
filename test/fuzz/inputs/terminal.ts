import { readKeys } from '../../../src/ui/keys/read-keys.ts';
import { press } from '../../../src/ui/state/press.ts';
import type { Ui } from '../../../src/ui/state/ui.ts';
import { beginning } from '../../../src/ui/state/ui.ts';
import { randomKeys } from '../../terminal/random-keys.ts';
import { heldFrame } from '../held-frame.ts';
import { NASTY_TEXTS } from '../nasty.ts';
import { oneOf } from '../spoil.ts';
import type { FuzzedInput } from './input.ts';
import { BLANK, FILLED, SMALL_WORLD } from './small-world.ts';

const SIZES = [
  [60, 20],
  [80, 24],
  [120, 40],
  [40, 10],
] as const;
const KEYS = 7;
const STARTS: readonly Ui[] = [
  beginning(BLANK, { kind: 'start' }),
  beginning(BLANK, null),
  beginning(FILLED, null),
];

/** Bytes that a terminal sends, good ones among broken ones: every screen after them fits and steers nothing. */
export const TERMINAL: FuzzedInput = {
  name: 'terminal',
  share: 100,
  seeds: () => [
    Buffer.from('12,5 mm\r\u001b[A\u001b[B\u001b[200~a\r\nb\u001b[201~\u001bOP\u001b[<0;10;10M\t\u007f'),
    Buffer.from('g material\r1\r\u001b[Z\u0014\u000e\u0012?\u001b'),
    Buffer.from('\u001b[200~Name;Shape;Size\r\nHinge;block;90 x 60 x 55\r\n\u001b[201~\r'),
  ],
  take: (bytes, chance) => {
    let ui = oneOf(STARTS, chance);
    const writes = [bytes.toString('utf8').slice(0, 4000)];
    for (let left = KEYS; left > 0; left -= 1)
      writes.push(chance.happens(0.15) ? oneOf(NASTY_TEXTS, chance) : randomKeys(chance.next));
    // the bytes come last too, and in two halves
    writes.push(writes[0]?.slice(0, 20) ?? '', writes[0]?.slice(20) ?? '');
    let rest = '';
    for (const [at, write] of writes.entries()) {
      const read = readKeys(rest + write, at === writes.length - 1 || chance.happens(0.5));
      rest = read.rest;
      for (const key of read.keys.slice(0, 300)) [ui] = press(ui, key, SMALL_WORLD);
      if (at % 4 > 0) continue;
      const [columns, rows] = oneOf(SIZES, chance);
      heldFrame(ui, SMALL_WORLD, { columns, rows }, chance.happens(0.2));
    }
    return 'taken';
  },
};
