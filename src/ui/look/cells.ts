import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import type { Row, Span } from './row.ts';

/** Columns that a text takes. Example: widthOf('軸') → 2. */
export const widthOf = (text: string): number => stringWidth(text);

const GRAPHEMES = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** What a reader sees as single characters. */
export const graphemes = (text: string): readonly string[] =>
  [...GRAPHEMES.segment(text)].map(({ segment }) => segment);

/** The beginning of a text that fits into so many columns; what is cut off is shown by `more`. */
export function cut(text: string, width: number, more = '…'): string {
  if (widthOf(text) <= width) return text;
  const room = width - widthOf(more);
  if (room < 0) return '';
  let [taken, used] = ['', 0];
  for (const sign of graphemes(text)) {
    const own = widthOf(sign);
    if (used + own > room) break;
    taken += sign;
    used += own;
  }
  return `${taken}${more}`;
}

/** A text in lines no wider than `width`; a word that is wider than a line is broken. */
export function wrapped(text: string, width: number): readonly string[] {
  if (width < 1) return [];
  return wrapAnsi(text, width, { hard: true, trim: true })
    .split('\n')
    .map((line) => cut(line.trimEnd(), width));
}

/** A text filled up with spaces to `width` columns, or cut to them. */
export const padded = (text: string, width: number): string => {
  const fitting = cut(text, width);
  return `${fitting}${' '.repeat(Math.max(0, width - widthOf(fitting)))}`;
};

/** The same row, no wider than `width`. */
export function fitRow(row: Row, width: number): Row {
  const spans: Span[] = [];
  let left = width;
  for (const span of row.spans) {
    const own = widthOf(span.text);
    if (own <= left) {
      spans.push(span);
      left -= own;
      continue;
    }
    spans.push({ ...span, text: cut(span.text, left) });
    break;
  }
  return { ...row, spans };
}
