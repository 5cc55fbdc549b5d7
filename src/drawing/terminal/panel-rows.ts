import type { Keys } from '../keys.ts';
import { lanesOf } from '../lanes.ts';
import { boundsOf } from '../outline.ts';
import type { Panel } from '../scene.ts';
import { asciiSign, brailleSign } from './cell-sign.ts';
import { drawShape, type Placing } from './dots.ts';
import { DOTS_ACROSS, DOTS_DOWN, emptyGrid } from './grid.ts';
import { drawMeasures, LANE_COLUMNS, LANE_ROWS } from './measures.ts';
import { drawWords } from './words.ts';

export interface PanelLook {
  /** mm that a dot is wide and high */
  readonly dot: { readonly across: number; readonly down: number };
  readonly ascii: boolean;
}

/** Cells that the measures around a panel take up. */
export function laneCells(panel: Panel, across: number): { readonly columns: number; readonly rows: number } {
  const lanes = lanesOf(panel.dimensions, across * LEAST_DOTS);
  return {
    columns: (lanes.left.length + lanes.right.length) * LANE_COLUMNS,
    rows: (lanes.above.length + lanes.below.length) * LANE_ROWS,
  };
}

/** So many dots a measure keeps for its letter. */
const LEAST_DOTS = 6;

/** A panel as rows of signs, its measures around it; no row ends in spaces. */
export function panelRows(panel: Panel, keys: Keys, { dot, ascii }: PanelLook): readonly string[] {
  const lanes = lanesOf(panel.dimensions, dot.across * LEAST_DOTS);
  const { left, right, low, high } = boundsOf(panel);
  const before = { columns: lanes.left.length * LANE_COLUMNS, rows: lanes.above.length * LANE_ROWS };
  const around = laneCells(panel, dot.across);
  const [dotsX, dotsY] = [
    Math.round((right - left) / dot.across) + 1,
    Math.round((high - low) / dot.down) + 1,
  ];
  const grid = emptyGrid(
    Math.ceil(dotsX / DOTS_ACROSS) + around.columns,
    Math.ceil(dotsY / DOTS_DOWN) + around.rows,
  );
  const placing: Placing = {
    ...dot,
    left: left - before.columns * DOTS_ACROSS * dot.across,
    high: high + before.rows * DOTS_DOWN * dot.down,
  };
  for (const shape of panel.shapes) drawShape(grid, placing, shape);
  drawMeasures(grid, { placing, keys, lanes, ascii });
  drawWords(grid, placing, panel, keys, ascii);
  const signOf = ascii ? asciiSign : brailleSign;
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (_, column) => {
      const cell = row * grid.columns + column;
      const sign = grid.signs[cell] ?? '';
      return sign === '' ? signOf(grid.outline[cell] ?? 0, grid.hatch[cell] ?? 0) : sign;
    })
      .join('')
      .trimEnd(),
  );
}
