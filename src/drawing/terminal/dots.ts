import { type Hatch, LOOKS, type Stroke } from '../look.ts';
import { isInside, outlineOf } from '../outline.ts';
import type { Form, Point, Shape } from '../scene.ts';
import { ticksOf } from '../ticks.ts';
import { clearDot, DOTS_ACROSS, DOTS_DOWN, type Grid, setDot } from './grid.ts';

/** Where mm come to lie in a field of dots. */
export interface Placing {
  /** mm that a dot is wide and high */
  readonly across: number;
  readonly down: number;
  /** mm at the middle of the dot at the upper left */
  readonly left: number;
  readonly high: number;
}

/** mm a dot at which a picture of so many mm fills at most these cells. */
export function dotSize(
  { width, height }: { readonly width: number; readonly height: number },
  cells: { readonly columns: number; readonly rows: number },
  aspect: number,
): { readonly across: number; readonly down: number } {
  const down = aspect * (DOTS_ACROSS / DOTS_DOWN);
  // the first and the last dot stand on the edges
  const [dotsX, dotsY] = [cells.columns * DOTS_ACROSS - 1, cells.rows * DOTS_DOWN - 1];
  const across = Math.max(width / dotsX, height / (dotsY * down), Number.MIN_VALUE);
  return { across, down: across * down };
}

/** The dot in which a point lies. */
export const dotAt = ({ across, down, left, high }: Placing, [x, y]: Point): Point => [
  Math.round((x - left) / across),
  Math.round((high - y) / down),
];

/** Draws a shape: hatching first, its outline in a layer of its own. */
export function drawShape(grid: Grid, placing: Placing, { thing, form }: Shape): void {
  const { stroke, hatch } = LOOKS[thing];
  if (hatch !== 'none') drawHatch(grid, placing, form, hatch);
  drawStroke(grid, placing, outlineOf(form, placing.across / 2), stroke);
  if (stroke === 'ticked') {
    const ticks = ticksOf(form, TICKS_APART * placing.across, TICK_LENGTH * placing.across);
    for (const tick of ticks) drawStroke(grid, placing, tick, 'solid');
  }
}

const TICKS_APART = 8;
const TICK_LENGTH = 2;

/** Dots that are set and left out in turn, along a stroke. */
const RHYTHM: Readonly<Record<Stroke, readonly number[]>> = {
  solid: [1],
  ticked: [1],
  dashed: [4, 3],
  dotted: [1, 2],
  faint: [1, 3],
  chain: [6, 2, 1, 2],
};

export function drawStroke(grid: Grid, placing: Placing, points: readonly Point[], stroke: Stroke): void {
  const rhythm = RHYTHM[stroke];
  const turn = rhythm.reduce((sum, each) => sum + each, 0);
  const isSet = (at: number): boolean => {
    let left = at % turn;
    const index = rhythm.findIndex((each) => {
      left -= each;
      return left < 0;
    });
    return index % 2 === 0;
  };
  let gone = 0;
  let last: Point | null = null;
  points.forEach((to, index) => {
    const [from] = [points[index - 1] ?? to];
    const [x1, y1] = dotAt(placing, from);
    const [x2, y2] = dotAt(placing, to);
    const steps = Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1));
    for (let step = 0; step <= steps; step += 1) {
      const part = steps === 0 ? 0 : step / steps;
      const [x, y] = [Math.round(x1 + (x2 - x1) * part), Math.round(y1 + (y2 - y1) * part)];
      if (last !== null && last[0] === x && last[1] === y) continue;
      last = [x, y];
      if (stroke === 'solid' || stroke === 'ticked' || isSet(gone)) setDot(grid, 'outline', x, y);
      gone += 1;
    }
  });
}

/** Which dots a hatching sets. */
const HATCHES: Readonly<Record<Exclude<Hatch, 'none'>, (x: number, y: number) => boolean>> = {
  rising: (x, y) => (x + y) % 6 === 0,
  falling: (x, y) => (x - y + 6000) % 6 === 0,
  crossed: (x, y) => (x + y) % 8 === 0 || (x - y + 8000) % 8 === 0,
  level: (_x, y) => y % 4 === 2,
  upright: (x) => x % 4 === 1,
  dots: (x, y) => y % 4 === 1 && (x + y) % 6 === 1,
  blank: () => false,
};

/** Hides what was drawn before. */
function drawHatch(grid: Grid, placing: Placing, form: Form, hatch: Exclude<Hatch, 'none'>): void {
  const isSet = HATCHES[hatch];
  const [right, low] = [grid.columns * DOTS_ACROSS, grid.rows * DOTS_DOWN];
  for (let y = 0; y < low; y += 1) {
    for (let x = 0; x < right; x += 1) {
      const point: Point = [placing.left + x * placing.across, placing.high - y * placing.down];
      if (!isInside(form, point)) continue;
      clearDot(grid, x, y);
      if (isSet(x, y)) setDot(grid, 'hatch', x, y);
    }
  }
}
