import { graphemes } from '../look/cells.ts';
import type { Key } from './key.ts';

/** What is being typed, and where the next character goes, in characters from the left. */
export interface TextField {
  readonly text: string;
  readonly caret: number;
}

export const NOTHING_TYPED: TextField = { text: '', caret: 0 };

export const LONGEST_TYPED = 500;

/** The field after a key that edits it, the same where there is no room for all of a text; null where the key does not. */
export function edited(field: TextField, key: Key): TextField | null {
  if (key.kind !== 'named') return inserted(field, key.text);
  const signs = graphemes(field.text);
  const { caret } = field;
  if (field.text === '') return key.name === 'backspace' || key.name === 'delete' ? field : null;
  switch (key.name) {
    case 'left':
      return { ...field, caret: Math.max(0, caret - 1) };
    case 'right':
      return { ...field, caret: Math.min(signs.length, caret + 1) };
    case 'home':
    case 'ctrl-a':
      return { ...field, caret: 0 };
    case 'end':
    case 'ctrl-e':
      return { ...field, caret: signs.length };
    case 'backspace':
      return caret === 0 ? field : without(signs, caret - 1);
    case 'delete':
      return caret === signs.length ? field : without(signs, caret);
    case 'ctrl-u':
      return NOTHING_TYPED;
    default:
      return null;
  }
}

const without = (signs: readonly string[], at: number): TextField => ({
  text: signs.toSpliced(at, 1).join(''),
  caret: at,
});

function inserted(field: TextField, more: string): TextField {
  const { text, caret } = field;
  const signs = graphemes(text);
  const before = signs.slice(0, caret).join('') + more;
  const whole = before + signs.slice(caret).join('');
  if (whole.length > LONGEST_TYPED) return field;
  // a combining mark joins the character before it
  return { text: whole, caret: graphemes(before).length };
}
