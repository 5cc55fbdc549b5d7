import { cut, fitRow, wrapped } from '../look/cells.ts';
import { EMPTY, type Row, row, type Tone } from '../look/row.ts';

/** A piece of a screen that can be shown in fewer rows than it would like. */
export interface Block {
  /** rows that it would like */
  readonly wants: number;
  /** rows below which it is left out, as long as others can give way */
  readonly least: number;
  /** the highest gives way first */
  readonly rank: number;
  /** at most so many rows; never more than are asked for */
  readonly draw: (rows: number) => readonly Row[];
}

/** A text that says so when it is cut. */
export function textBlock(text: string, width: number, rank: number, least = 1, tone: Tone = 'plain'): Block {
  const lines = text === '' ? [] : wrapped(text, width);
  return {
    wants: lines.length,
    least: Math.min(least, lines.length),
    rank,
    draw: (rows) => shortened(lines, rows, width).map((line) => row(line, tone)),
  };
}

function shortened(lines: readonly string[], rows: number, width: number): readonly string[] {
  if (lines.length <= rows) return lines;
  const shown = lines.slice(0, rows);
  return shown.map((line, index) => (index === rows - 1 ? `${cut(line, width - 2)} …` : line));
}

export const rowsBlock = (rows: readonly Row[], rank: number, least = rows.length): Block => ({
  wants: rows.length,
  least: Math.min(least, rows.length),
  rank,
  draw: (count) => rows.slice(0, count),
});

export const gap = (rank: number): Block => rowsBlock([EMPTY], rank, 0);

/**
 * Blocks above each other, then empty rows, then the foot, on exactly `height` rows of at most `width` columns.
 * Where there is too little room, the blocks of the highest rank give way first, down to their least, then wholly.
 */
export function stacked(
  blocks: readonly Block[],
  foot: readonly Row[],
  width: number,
  height: number,
): readonly Row[] {
  const shownFoot = foot.slice(Math.max(0, foot.length - height));
  const room = height - shownFoot.length;
  const given = blocks.map(({ wants }) => wants);
  const over = (): number => given.reduce((sum, rows) => sum + rows, 0) - room;
  const order = blocks.map((_, index) => index).sort((a, b) => rankOf(blocks, b) - rankOf(blocks, a));
  for (const down of ['least', 'nothing'] as const) {
    for (const index of order) {
      const least = down === 'least' ? (blocks[index]?.least ?? 0) : 0;
      const now = given[index] ?? 0;
      given[index] = Math.max(Math.min(now, least), now - Math.max(0, over()));
    }
  }
  const body = blocks.flatMap((block, index) => block.draw(given[index] ?? 0)).slice(0, room);
  const fill = Array.from({ length: room - body.length }, () => EMPTY);
  return [...body, ...fill, ...shownFoot].map((each) => fitRow(each, width));
}

const rankOf = (blocks: readonly Block[], index: number): number => blocks[index]?.rank ?? 0;
