import type { Binding } from './binding.ts';
import { GOING_KEYS } from './going-keys.ts';
import type { Key } from './key.ts';
import { MOVING_KEYS } from './moving-keys.ts';
import type { Action, Situation } from './situation.ts';

/** Every key, in the order in which the last line shows them. */
const KEYMAP: readonly Binding[] = [...MOVING_KEYS, ...GOING_KEYS];

const nameOf = (key: Key): string | null =>
  key.kind === 'named' ? key.name : key.kind === 'text' ? key.text : null;

/** What a key does here; null where it does nothing but be typed. */
export function actionOf(key: Key, here: Situation): Action | null {
  const name = nameOf(key);
  return (
    KEYMAP.find(({ keys, where }) => name !== null && keys.includes(name) && where(here))?.action ?? null
  );
}

/** The keys that do something here, each action once. */
const boundHere = (here: Situation): readonly Binding[] =>
  KEYMAP.filter(({ where }) => where(here)).filter(
    ({ action, keys }, index, all) =>
      all.findIndex(
        (other) =>
          other.action === action &&
          (here.typing || other.keys.every((key) => keys.includes(key)) || other.shown !== null),
      ) === index,
  );

/** What the last line names: keys and what they do, the most needed first, help always. */
export const shownKeys = (here: Situation): readonly (readonly [key: string, does: string])[] =>
  boundHere(here).flatMap(({ shown }) => (shown === null ? [] : [shown]));

/** Every key that does something here, and what it does. */
export const helpHere = (here: Situation): readonly (readonly [keys: string, does: string])[] => [
  ...KEYMAP.filter(({ where }) => where(here)).map(({ help }) => help),
  ['Ctrl-C', 'twice: leaves; everything answered is kept'],
];
