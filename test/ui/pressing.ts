import type { World } from '../../src/session/world.ts';
import { readKeys } from '../../src/ui/keys/read-keys.ts';
import { press } from '../../src/ui/state/press.ts';
import type { Request, Ui } from '../../src/ui/state/ui.ts';

export const KEY = {
  up: '\u001b[A',
  down: '\u001b[B',
  left: '\u001b[D',
  enter: '\r',
  escape: '\u001b',
  shiftTab: '\u001b[Z',
  backspace: '\u007f',
  home: '\u001b[H',
  end: '\u001b[F',
} as const;

export const control = (letter: string): string => String.fromCharCode(letter.charCodeAt(0) - 96);

/** Keys as a terminal sends them, one write after the other; what the screen is then, and all that was asked for. */
export function pressing(
  ui: Ui,
  world: World,
  ...writes: readonly string[]
): readonly [Ui, readonly Request[]] {
  let now = ui;
  const asked: Request[] = [];
  for (const text of writes) {
    for (const key of readKeys(text, true).keys) {
      const [next, requests] = press(now, key, world);
      now = next;
      asked.push(...requests);
    }
  }
  return [now, asked];
}

export const after = (ui: Ui, world: World, ...writes: readonly string[]): Ui =>
  pressing(ui, world, ...writes)[0];
