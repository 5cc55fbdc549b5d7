import type { Key } from './key.ts';

/** A key, what it does, where, and how that is said. */
export interface BindingOf<Action, Here> {
  readonly action: Action;
  /** as they are handed over: a name, or a character; the first is the one that is shown */
  readonly keys: readonly string[];
  /** on the last line, in a word or two; null: only in the help */
  readonly shown: string | null;
  /** in the help */
  readonly help: string;
  readonly where: (here: Here) => boolean;
}

/** Keys and what they do, in words. */
export type KeyWords = readonly (readonly [key: string, does: string])[];

export interface Keymap<Action, Here> {
  /** What a key does here; null where it does nothing but be typed. */
  readonly actionOf: (key: Key, here: Here) => Action | null;
  /** What the last line names: keys and what they do, in the order in which they are needed. */
  readonly shownKeys: (here: Here) => KeyWords;
  /** Every key that does something here, and what it does. */
  readonly allKeys: (here: Here) => KeyWords;
}

/**
 * Keys in the order in which the last line shows them. Where two fit, the first takes the key; of an action with several keys
 * the others stay.
 */
export function keymapOf<Action extends string, Here>(
  bindings: readonly BindingOf<Action, Here>[],
): Keymap<Action, Here> {
  type Binding = BindingOf<Action, Here>;
  /** What works here: each binding with those of its keys that no earlier one takes; without any it is left out. */
  const effective = (here: Here): readonly Binding[] => {
    const taken = new Set<string>();
    return bindings
      .filter(({ where }) => where(here))
      .flatMap((binding) => {
        const keys = binding.keys.filter((key) => !taken.has(key));
        for (const key of keys) taken.add(key);
        return keys.length === 0 ? [] : [{ ...binding, keys }];
      });
  };
  /** What works here, each action once with all its keys. */
  const actionsHere = (here: Here): readonly Binding[] => {
    const all = effective(here);
    return all
      .filter(({ action }, index) => all.findIndex((other) => other.action === action) === index)
      .map((first) => ({
        ...first,
        keys: all.filter(({ action }) => action === first.action).flatMap(({ keys }) => keys),
      }));
  };
  return {
    actionOf: (key, here) => {
      const name = nameOf(key);
      return (
        bindings.find(({ keys, where }) => name !== null && keys.includes(name) && where(here))?.action ??
        null
      );
    },
    shownKeys: (here) =>
      actionsHere(here).flatMap(({ action, keys, shown }) =>
        shown === null ? [] : [[shortLabel(action, keys), shown] as const],
      ),
    allKeys: (here) =>
      actionsHere(here).map(
        ({ keys, help }) =>
          [keys[0] === FIRST_DIGIT ? digits(keys) : keys.map(labelOf).join(', '), help] as const,
      ),
  };
}

const nameOf = (key: Key): string | null =>
  key.kind === 'named' ? key.name : key.kind === 'text' ? key.text : null;

const NAMES: Readonly<Record<string, string>> = {
  up: '↑',
  down: '↓',
  left: '←',
  right: '→',
  enter: 'Enter',
  escape: 'Esc',
  'shift-tab': 'Shift-Tab',
  'page-up': 'Page up',
  'page-down': 'Page down',
  home: 'Home',
  end: 'End',
  backspace: 'Backspace',
  ' ': 'Space',
};

const labelOf = (key: string): string =>
  NAMES[key] ?? (key.startsWith('ctrl-') ? `Ctrl-${key.slice(5).toUpperCase()}` : key);

const FIRST_DIGIT = '1';
const digits = (keys: readonly string[]): string => `${FIRST_DIGIT}-${keys.at(-1)}`;

function shortLabel(action: string, keys: readonly string[]): string {
  const [first = ''] = keys;
  if (action === 'down') return '↑↓';
  if (first === FIRST_DIGIT) return digits(keys);
  return labelOf(first).replace('Ctrl-', '^');
}
