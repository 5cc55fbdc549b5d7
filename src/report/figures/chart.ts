import { roundLength } from '../../drawing/round-length.ts';
import { type Label, line, type Panel, type Point, type Shape } from '../../drawing/scene.ts';
import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { Decision } from '../../rules/decision.ts';
import { currencyOf } from '../blocks/value-text.ts';

/** mm on paper */
const WIDE = 120;
const HIGH = 60;
const TICKS = 6;
/** width of a letter on paper, nearly, in a terminal too */
const LETTER = 1.9;

/** What is laid off along one side of a chart. */
export interface Axis {
  readonly title: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
}

/** A chart's field: axes with round numbers, and where a value comes to lie in it. */
export interface Chart {
  readonly at: (x: number, y: number) => Point;
  /** mm of the picture for one of the unit */
  readonly times: { readonly x: number; readonly y: number };
  readonly frame: Pick<Panel, 'shapes' | 'labels'>;
}

/** Axes that hold all values; each begins at its least, and has at most so many numbers on it. */
export function chartOf(decision: Decision, x: Axis, y: Axis): Chart {
  const times = { x: WIDE / (x.most - x.least), y: HIGH / (y.most - y.least) };
  const at = (valueX: number, valueY: number): Point => [
    (valueX - x.least) * times.x,
    (valueY - y.least) * times.y,
  ];
  const write = (axis: Axis, value: number): string =>
    formatQuantity(value, axis.unit, { grouped: 'thin', currency: currencyOf(decision) });
  const onX = ticksOf(x).map(
    (value): Label => ({ at: [at(value, 0)[0], -6], text: write(x, value), side: 'on' }),
  );
  const texts = ticksOf(y).map((value) => write(y, value));
  const left = -(Math.max(...texts.map(({ length }) => length)) * LETTER + 5);
  const onY = ticksOf(y).map(
    (value, index): Label => ({
      at: [left, at(0, value)[1]],
      text: texts[index] ?? '',
      side: 'right',
    }),
  );
  const marks = [
    ...ticksOf(x).map((value): Shape => line('frame', [at(value, 0)[0], 0], [at(value, 0)[0], -2])),
    ...ticksOf(y).map((value): Shape => line('frame', [0, at(0, value)[1]], [-2, at(0, value)[1]])),
  ];
  return {
    at,
    times,
    frame: {
      shapes: [line('frame', [0, HIGH], [0, 0], [WIDE, 0]), ...marks],
      labels: [
        ...onX,
        ...onY,
        { at: [1, HIGH + 6], text: y.title, side: 'right' },
        { at: [WIDE, -12], text: x.title, side: 'left' },
      ],
    },
  };
}

/** Round numbers along an axis. */
function ticksOf({ least, most }: Axis): readonly number[] {
  // the least of 1, 2, 5, 10… that leaves no more of them
  const step = 1 / roundLength(TICKS / (most - least));
  const first = Math.ceil(least / step);
  const last = Math.floor(most / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
}
