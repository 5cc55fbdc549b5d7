import wrapAnsi from 'wrap-ansi';

/** Columns of a text where the terminal does not say, and the least that is worth wrapping for. */
export const USUAL_WIDTH = 80;
const LEAST_WIDTH = 20;

/**
 * A text in lines no wider than `width`, as far as words allow: words are never broken. `indent` stands before
 * every line but the first, `first` before that one.
 */
export function paragraph(
  text: string,
  width: number,
  first = '',
  indent = ' '.repeat(first.length),
): string[] {
  const room = Math.max(LEAST_WIDTH, width) - Math.max(first.length, indent.length);
  return wrapAnsi(text, room, { hard: false, trim: true })
    .split('\n')
    .map((line, index) => `${index === 0 ? first : indent}${line}`.trimEnd());
}
