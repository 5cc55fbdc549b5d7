import { GOING_KEYS } from './going-keys.ts';
import { type KeyWords, keymapOf } from './keymap-of.ts';
import { MOVING_KEYS } from './moving-keys.ts';
import type { Situation } from './situation.ts';
import { TRIAL_KEYS, TRY_KEYS } from './trial-keys.ts';

/** Every key of the interview, in the order in which the last line shows them. */
const KEYMAP = keymapOf([...TRIAL_KEYS, ...MOVING_KEYS, ...TRY_KEYS, ...GOING_KEYS]);

export const { actionOf, shownKeys } = KEYMAP;

/** Every key that does something here, and what it does. */
export const helpHere = (here: Situation): KeyWords => [
  ...KEYMAP.allKeys(here),
  ...(here.typing
    ? [['While typing', '←, →, Home, End, Backspace and Delete work on what is typed'] as const]
    : []),
  ['Ctrl-C', 'twice: leaves; everything answered is kept'],
];
