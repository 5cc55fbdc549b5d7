import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import { type Bar, type BarForm, type Bars, barEnds, barSpan } from '../bars.ts';

const SIGNS: Readonly<Record<BarForm, string>> = {
  met: '█',
  conditional: '▒',
  undecided: '░',
  missed: '▓',
};
const ASCII: Readonly<Record<BarForm, string>> = {
  met: '#',
  conditional: '=',
  undecided: '.',
  missed: '%',
};

/** Of the columns, what names may take up. */
const MOST_NAMES = 0.42;
const LEAST_FIELD = 10;
const MOST_WORDS = 16;

/** A chart of bars as rows, one a bar: its name, the bar on its axis, word and number. */
export function barRows(
  bars: Bars,
  { columns, ascii }: { readonly columns: number; readonly ascii: boolean },
): readonly string[] {
  const words = bars.rows.map(wordsOf);
  const names = Math.min(widest(bars.rows.map(({ name }) => name)), Math.floor(columns * MOST_NAMES));
  const field = Math.max(LEAST_FIELD, columns - names - widest(words.flat()) - 2);
  const zero = cellOf(0, barSpan(bars), field);
  const line = ascii ? '|' : '│';
  const empty = `${' '.repeat(zero)}${line}${' '.repeat(field - zero - 1)}`;
  const rows = bars.rows.flatMap((bar, index) => {
    const name = wrapAnsi(bar.name, names, { hard: true, trim: true }).split('\n');
    const beside = words[index] ?? [];
    return Array.from({ length: Math.max(name.length, beside.length) }, (_, at) => {
      const drawn = at === 0 ? fieldOf(bar, bars, field, zero, ascii) : empty;
      return `${padEnd(name[at] ?? '', names)} ${drawn} ${beside[at] ?? ''}`;
    });
  });
  return [`${' '.repeat(names + 1)}${axisOf(bars, field)}`, ...rows].map((row) => row.trimEnd());
}

/** Word and number in one line; a long range in a line of its own. */
const wordsOf = ({ word, text }: Bar): readonly string[] => {
  const both = `${word} ${text}`;
  return stringWidth(both) <= MOST_WORDS ? [both] : [word, text];
};

const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map((text) => stringWidth(text)));

const padEnd = (text: string, width: number): string =>
  `${text}${' '.repeat(Math.max(0, width - stringWidth(text)))}`;

/** The cell of a field in which a value lies; the zero line has one of its own. */
const cellOf = (value: number, [low, high]: readonly [number, number], field: number): number =>
  Math.round(((value - low) / (high - low)) * (field - 1));

/** The cells beside the zero line that a bar fills; what is not nothing fills one at least, what has no end points on. */
function fieldOf(bar: Bar, bars: Bars, field: number, zero: number, ascii: boolean): string {
  const span = barSpan(bars);
  const [from, to] = barEnds(bar, span);
  const [a, b] = [cellOf(from, span, field), cellOf(to, span, field)];
  const first = from < 0 ? Math.min(a, zero - 1) : Math.max(a, zero + 1);
  const last = to > 0 ? Math.max(b, zero + 1) : Math.min(b, zero - 1);
  const sign = (ascii ? ASCII : SIGNS)[bar.form];
  const cells = Array.from({ length: field }, (_, cell) =>
    cell === zero ? (ascii ? '|' : '│') : cell >= first && cell <= last && from !== to ? sign : ' ',
  );
  if (bar.from === null) cells[0] = '<';
  if (bar.to === null) cells[field - 1] = '>';
  return cells.join('');
}

/** The numbers on the axis, each over its place, as far as they do not meet: zero and the ends before the others. */
function axisOf(bars: Bars, field: number): string {
  const cells = Array.from({ length: field }, () => ' ');
  const [low, high] = barSpan(bars);
  const rank = (at: number): number => (at === 0 ? 0 : at === low || at === high ? 1 : 2);
  for (const { at, text } of bars.ticks.toSorted((a, b) => rank(a.at) - rank(b.at))) {
    const middle = cellOf(at, barSpan(bars), field);
    const start = Math.max(0, Math.min(field - text.length, middle - Math.floor(text.length / 2)));
    const around = cells.slice(Math.max(0, start - 1), start + text.length + 1);
    if (around.every((each) => each === ' ')) cells.splice(start, text.length, ...text);
  }
  return cells.join('');
}
