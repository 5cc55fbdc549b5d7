import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import type { Table } from '../blocks/block.ts';
import { wrapped } from './text-wrapped.ts';

const GAP = '  ';
/** Rows of more lines are easier to read one below the other, each cell with its heading. */
const MOST_LINES = 4;

type Cells = readonly string[];

/** A table in columns, its cells broken into lines where they have to be; where that is no use, a short list a row. */
export function tableLines(
  head: Cells,
  rows: readonly Cells[],
  align: Table['align'],
  width: number,
): readonly string[] {
  const widths = widthsFor([head, ...rows], width);
  if (widths === null) return rows.flatMap((row) => stacked(head, row, width));
  const laid = [head, ...rows].map((cells) =>
    cells.map((cell, column) => inLines(cell, widths[column] ?? 0)),
  );
  if (laid.some((cells) => cells.some(({ length }) => length > MOST_LINES))) {
    return rows.flatMap((row) => stacked(head, row, width));
  }
  return laid.flatMap((cells) => rowLines(cells, widths, align));
}

function rowLines(
  cells: readonly (readonly string[])[],
  widths: readonly number[],
  align: Table['align'],
): readonly string[] {
  const count = Math.max(1, ...cells.map(({ length }) => length));
  return Array.from({ length: count }, (_, line) =>
    cells
      .map((lines, column) => {
        const text = lines[line] ?? '';
        const fill = ' '.repeat(Math.max(0, (widths[column] ?? 0) - stringWidth(text)));
        return align[column] === 'right' ? `${fill}${text}` : `${text}${fill}`;
      })
      .join(GAP)
      .trimEnd(),
  );
}

const inLines = (text: string, width: number): readonly string[] =>
  wrapAnsi(text, Math.max(1, width), { hard: false, trim: true }).split('\n');

/** Widths of the columns that fit: the widest give way first, none below its longest word. Null: there are none. */
function widthsFor(rows: readonly Cells[], width: number): readonly number[] | null {
  const columns = (rows[0] ?? []).map((_, column) => rows.map((cells) => cells[column] ?? ''));
  const widths = columns.map((cells) => Math.max(...cells.map((cell) => stringWidth(cell))));
  const least = columns.map((cells) =>
    Math.max(...cells.flatMap((cell) => cell.split(' ').map((word) => stringWidth(word)))),
  );
  const room = width - GAP.length * (widths.length - 1);
  const sum = (): number => widths.reduce((total, each) => total + each, 0);
  while (sum() > room) {
    const spare = widths.map((each, column) => (each > (least[column] ?? 0) ? each : -1));
    const widest = spare.indexOf(Math.max(...spare));
    if ((spare[widest] ?? -1) < 0) return null;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}

function stacked(head: Cells, row: Cells, width: number): readonly string[] {
  const [title = '', ...cells] = row;
  const facts = cells.flatMap((cell, index) =>
    cell === '' ? [] : wrapped(`${head[index + 1] ?? ''}: ${cell}`, width, '  ', '    '),
  );
  return [...wrapped(title, width, '- ', '  '), ...facts];
}
