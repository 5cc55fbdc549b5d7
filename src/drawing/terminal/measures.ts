import { type Keys, keyOfDimension } from '../keys.ts';
import { isLevel, type Lanes, spanOf } from '../lanes.ts';
import { type Dimension, SIDES } from '../scene.ts';
import { dotAt, drawStroke, type Placing } from './dots.ts';
import { DOTS_ACROSS, DOTS_DOWN, type Grid, setSigns } from './grid.ts';

/** Columns that a row of upright measures takes up, and rows that one of level measures does. */
export const LANE_COLUMNS = 3;
export const LANE_ROWS = 1;

interface Signs {
  readonly across: string;
  readonly upright: string;
  readonly ends: readonly [left: string, right: string, top: string, bottom: string];
}

const BOX: Signs = { across: '─', upright: '│', ends: ['├', '┤', '┬', '┴'] };
const HEAVY_BOX: Signs = { across: '━', upright: '┃', ends: ['┣', '┫', '┳', '┻'] };
const ASCII: Signs = { across: '-', upright: '|', ends: ['|', '|', '+', '+'] };
const HEAVY_ASCII: Signs = { across: '=', upright: '#', ends: ['#', '#', '#', '#'] };

export interface Measuring {
  readonly placing: Placing;
  readonly keys: Keys;
  readonly lanes: Lanes;
  readonly ascii: boolean;
}

/** Draws measures on every side, their extension lines first; letters stand for names and numbers. */
export function drawMeasures(grid: Grid, drawing: Measuring): void {
  for (const side of SIDES) {
    drawing.lanes[side].forEach((row, lane) => {
      for (const each of row) drawMeasure(grid, drawing, each, lane);
    });
  }
}

function drawMeasure(grid: Grid, drawing: Measuring, dimension: Dimension, lane: number): void {
  const { placing, ascii } = drawing;
  const signs = ascii ? (dimension.tight ? HEAVY_ASCII : ASCII) : dimension.tight ? HEAVY_BOX : BOX;
  const key = keyOfDimension(drawing.keys, dimension);
  const [low, high] = spanOf(dimension);
  if (isLevel(dimension)) {
    const row = laneRow(grid, drawing, dimension.side, lane);
    const [from, to] = [low, high].map((x) => Math.floor(dotAt(placing, [x, 0])[0] / DOTS_ACROSS)) as [
      number,
      number,
    ];
    extend(grid, placing, dimension, row);
    setSigns(grid, from, row, levelLine(to - from + 1, key, signs));
    return;
  }
  const column = laneColumn(grid, drawing, dimension.side, lane);
  const [top, bottom] = [high, low].map((y) => Math.floor(dotAt(placing, [0, y])[1] / DOTS_DOWN)) as [
    number,
    number,
  ];
  extend(grid, placing, dimension, column);
  const count = bottom - top + 1;
  const middle = top + Math.floor((count - 1) / 2);
  for (let row = top; row <= bottom; row += 1) {
    const end = count < 3 ? signs.upright : row === top ? signs.ends[2] : row === bottom ? signs.ends[3] : '';
    setSigns(grid, column, row, end === '' ? signs.upright : end);
  }
  setSigns(grid, column, middle, key);
}

function levelLine(count: number, key: string, { across, ends }: Signs): string {
  if (count < key.length + 2) return key;
  const rest = count - 2 - key.length;
  const before = Math.floor(rest / 2);
  return `${ends[0]}${across.repeat(before)}${key}${across.repeat(rest - before)}${ends[1]}`;
}

const laneRow = (grid: Grid, { lanes }: Measuring, side: Dimension['side'], lane: number): number =>
  side === 'above' ? lanes.above.length - 1 - lane : grid.rows - lanes.below.length + lane;

/** The middle one of the columns of its row. */
const laneColumn = (grid: Grid, { lanes }: Measuring, side: Dimension['side'], lane: number): number =>
  side === 'left'
    ? (lanes.left.length - 1 - lane) * LANE_COLUMNS + 1
    : grid.columns - (lanes.right.length - lane) * LANE_COLUMNS + 1;

/** Dotted, from the points that are measured to where the measure stands. */
function extend(grid: Grid, placing: Placing, dimension: Dimension, at: number): void {
  for (const point of [dimension.from, dimension.to]) {
    const [x, y] = point;
    const end = isLevel(dimension)
      ? ([x, placing.high - (at * DOTS_DOWN + 1.5) * placing.down] as const)
      : ([placing.left + (at * DOTS_ACROSS + 0.5) * placing.across, y] as const);
    drawStroke(grid, placing, [point, end], 'faint');
  }
}
