import {
  styledCharsFromTokens as charsOf,
  tokenize as tokensOf,
  styledCharsToString as writtenOf,
} from '@alcalzone/ansi-tokenize';

const MOST_KNOWN = 400;
const known = new Map();

/** Like the real one; the same array for a line that was asked for lately. Nobody writes into it. */
export function tokenize(line) {
  const found = known.get(line);
  if (found !== undefined) return found;
  if (known.size >= MOST_KNOWN) known.clear();
  const tokens = tokensOf(line);
  known.set(line, tokens);
  return tokens;
}

const NO_STYLES = [];
const characters = new WeakMap();

/** Like the real one; once for the same tokens, and characters that look the same share their looks. */
export function styledCharsFromTokens(tokens) {
  const found = characters.get(tokens);
  if (found !== undefined) return found;
  let last = NO_STYLES;
  const chars = charsOf(tokens).map((char) => {
    const { styles } = char;
    const same =
      styles.length === last.length && styles.every(({ code }, index) => code === last[index].code);
    if (!same) last = styles;
    return { ...char, styles: last };
  });
  characters.set(tokens, chars);
  return chars;
}

/** Like the real one, which compares the looks of every two neighbors: those that share them go as one. */
export function styledCharsToString(chars) {
  const runs = [];
  let run = null;
  for (const { value, styles } of chars) {
    const same = run !== null && (styles === run.styles || (styles.length === 0 && run.styles.length === 0));
    if (same) {
      run.value += value;
    } else {
      run = { value, styles };
      runs.push(run);
    }
  }
  return writtenOf(runs);
}
