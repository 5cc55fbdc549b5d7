import type { Binding } from './binding.ts';
import { GOING_KEYS } from './going-keys.ts';
import type { Key } from './key.ts';
import { MOVING_KEYS } from './moving-keys.ts';
import type { Action, Situation } from './situation.ts';
import { TRIAL_KEYS, TRY_KEYS } from './trial-keys.ts';

/**
 * Every key, in the order in which the last line shows them. Where two fit, the first takes the key; of an action
 * with several keys the others stay.
 */
const KEYMAP: readonly Binding[] = [...TRIAL_KEYS, ...MOVING_KEYS, ...TRY_KEYS, ...GOING_KEYS];

const nameOf = (key: Key): string | null =>
  key.kind === 'named' ? key.name : key.kind === 'text' ? key.text : null;

/** What a key does here; null where it does nothing but be typed. */
export function actionOf(key: Key, here: Situation): Action | null {
  const name = nameOf(key);
  return (
    KEYMAP.find(({ keys, where }) => name !== null && keys.includes(name) && where(here))?.action ?? null
  );
}

/** What works here: each binding with those of its keys that no earlier one takes; without any it is left out. */
function effective(here: Situation): readonly Binding[] {
  const taken = new Set<string>();
  return KEYMAP.filter(({ where }) => where(here)).flatMap((binding) => {
    const keys = binding.keys.filter((key) => !taken.has(key));
    for (const key of keys) taken.add(key);
    return keys.length === 0 ? [] : [{ ...binding, keys }];
  });
}

/** What works here, each action once with all its keys. */
function actionsHere(here: Situation): readonly Binding[] {
  const all = effective(here);
  return all
    .filter(({ action }, index) => all.findIndex((other) => other.action === action) === index)
    .map((first) => ({
      ...first,
      keys: all.filter(({ action }) => action === first.action).flatMap(({ keys }) => keys),
    }));
}

const NAMES: Readonly<Record<string, string>> = {
  up: '↑',
  down: '↓',
  left: '←',
  enter: 'Enter',
  escape: 'Esc',
  'shift-tab': 'Shift-Tab',
  'page-up': 'Page up',
  'page-down': 'Page down',
  home: 'Home',
  end: 'End',
  ' ': 'Space',
};

const labelOf = (key: string): string =>
  NAMES[key] ?? (key.startsWith('ctrl-') ? `Ctrl-${key.slice(5).toUpperCase()}` : key);

const FIRST_DIGIT = '1';
const digits = (keys: readonly string[]): string => `${FIRST_DIGIT}-${keys.at(-1)}`;

const shortLabel = ({ action, keys }: Binding): string => {
  const [first = ''] = keys;
  if (action === 'down') return '↑↓';
  if (first === FIRST_DIGIT) return digits(keys);
  return labelOf(first).replace('Ctrl-', '^');
};

/** What the last line names: keys and what they do, in the order in which they are needed. */
export const shownKeys = (here: Situation): readonly (readonly [key: string, does: string])[] =>
  actionsHere(here).flatMap((each) => (each.shown === null ? [] : [[shortLabel(each), each.shown] as const]));

/** Every key that does something here, and what it does. */
export const helpHere = (here: Situation): readonly (readonly [keys: string, does: string])[] => [
  ...actionsHere(here).map(
    ({ keys, help }) =>
      [keys[0] === FIRST_DIGIT ? digits(keys) : keys.map(labelOf).join(', '), help] as const,
  ),
  ...(here.typing
    ? [['While typing', '←, →, Home, End, Backspace and Delete work on what is typed'] as const]
    : []),
  ['Ctrl-C', 'twice: leaves; everything answered is kept'],
];
