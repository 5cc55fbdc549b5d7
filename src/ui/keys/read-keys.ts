import { UNPRINTABLE } from '../../documents/printable.ts';
import { graphemes } from '../look/cells.ts';
import { type Key, type NamedKey, named } from './key.ts';
import { bracketed, pasteOf, waiting } from './paste.ts';

export interface KeysRead {
  readonly keys: readonly Key[];
  /** the beginning of a sequence whose end has not come yet */
  readonly rest: string;
}

const SEQUENCES: Readonly<Record<string, NamedKey>> = {
  A: 'up',
  B: 'down',
  C: 'right',
  D: 'left',
  H: 'home',
  F: 'end',
  Z: 'shift-tab',
  '1~': 'home',
  '3~': 'delete',
  '4~': 'end',
  '5~': 'page-up',
  '6~': 'page-down',
  '7~': 'home',
  '8~': 'end',
};

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const SEQUENCE = /^\u001b(?:\[M[\s\S]{3}|\[<[\d;]*[mM]|\[\[?[0-?]*[ -/]*[@-~]|O[@-~])/;
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const UNFINISHED = /^\u001b(?:\[\[?[0-?]*[ -/]*|\[M[\s\S]{0,2}|O)?$/;

/**
 * Keys out of what came from the terminal, in order, none lost: a run of text is one key a character, a sequence
 * is one key, a paste is one text. `flush`: nothing more is to be waited for, so that a lone Escape is a key, and a paste
 * without an end has ended.
 * Example: readKeys('12\r', true) → '1', '2', enter.
 */
export function readKeys(buffer: string, flush: boolean): KeysRead {
  const keys: Key[] = [];
  let left = buffer;
  while (left !== '') {
    const paste = bracketed(left);
    if (paste !== null) {
      // its end is still on its way
      if (!paste.ended && !flush) return { keys, rest: waiting(left) };
      keys.push(pasteOf(paste.text));
      left = paste.after;
      continue;
    }
    const sequence = SEQUENCE.exec(left)?.[0];
    if (sequence !== undefined) {
      const name = sequenceKey(sequence);
      if (name !== null) keys.push(named(name));
      left = left.slice(sequence.length);
    } else if (!flush && UNFINISHED.test(left)) {
      break;
    } else {
      const { key, length } = plainKey(left);
      if (key !== null) keys.push(key);
      left = left.slice(length);
    }
  }
  return { keys, rest: left };
}

/** The key of a whole sequence; null for reports of mouse and focus, and for keys that nothing is bound to. */
function sequenceKey(sequence: string): NamedKey | null {
  if (/^.\[(M|<)/.test(sequence)) return null;
  // held modifiers (1;5A) make no other key
  const own = sequence.slice(2).replace(/^1;\d+/, '');
  return Object.hasOwn(SEQUENCES, own) ? (SEQUENCES[own] ?? null) : null;
}

function plainKey(text: string): { readonly key: Key | null; readonly length: number } {
  const code = text.charCodeAt(0);
  if (text.startsWith('\r\n')) return { key: named('enter'), length: 2 };
  if (code === 13 || code === 10) return { key: named('enter'), length: 1 };
  if (code === 9) return { key: named('tab'), length: 1 };
  if (code === 27) return { key: named('escape'), length: 1 };
  if (code === 127 || code === 8) return { key: named('backspace'), length: 1 };
  if (code > 0 && code < 27) return { key: named(`ctrl-${String.fromCharCode(code + 96)}`), length: 1 };
  if (code < 32) return { key: null, length: 1 };
  // what follows an Escape or a control character is a key of its own
  const run = /^[^\p{Cc}]+/u.exec(text)?.[0] ?? text.charAt(0);
  const [sign = text.charAt(0)] = graphemes(run.slice(0, 64));
  const clean = sign.replace(UNPRINTABLE, '');
  return { key: clean === '' ? null : { kind: 'text', text: clean }, length: sign.length };
}
