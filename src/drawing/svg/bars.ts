import type { Element } from 'xast';
import { x } from 'xastscript';
import { type Bar, type Bars, barEnds, barSpan } from '../bars.ts';
import { line, type Point, polygon } from '../scene.ts';
import { length, type Paper, TEXT_SIZE, textWidth } from './paper.ts';
import { shapeElements } from './shape.ts';
import { textElement } from './text.ts';

/** mm on paper */
const ROW = 6;
const HIGH = 3.4;
const LONG = 80;
const GAP = 3.5;
const TIP = 2;
const AXIS = 8;

interface Measures {
  /** left of the field in which the bars are, mm from the left of the panel */
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

/** How large a chart of bars comes out, mm on paper. */
export function barsSize({ rows }: Bars): Measures {
  const widest = (texts: readonly string[]): number =>
    Math.max(0, ...texts.map((text) => textWidth(text, TEXT_SIZE)));
  const left = widest(rows.map(({ name }) => name)) + GAP;
  const right = widest(rows.map(wordsOf)) + GAP;
  return { left, width: left + LONG + right + GAP, height: AXIS + rows.length * ROW + 2 };
}

const pointed = ([x, y]: Point, by: number): Point => [x + by, y];

const wordsOf = ({ text, word }: Bar): string => `${word}\u2002${text}`;

/** A chart of bars, one row below the other: its name to the left, word and number to the right. */
export function barElements(bars: Bars, atX: number, atY: number): readonly Element[] {
  const { left } = barsSize(bars);
  const span = barSpan(bars);
  const [low, high] = span;
  const along = (value: number): number => atX + left + ((value - low) / (high - low)) * LONG;
  const bottom = atY + AXIS + bars.rows.length * ROW;
  // shapes are in mm on paper here, y up from its upper edge
  const paper: Paper = { scale: 1, left: 0, high: 0 };
  const at = (value: number, y: number): Point => [along(value), -y];
  return [
    ...bars.ticks.flatMap(({ at: value, text }) => [
      ...shapeElements(line('guide', at(value, atY + AXIS - 2), at(value, bottom)), paper),
      textElement(text, along(value), atY + AXIS - 3, { anchor: 'middle' }),
    ]),
    ...bars.rows.flatMap((bar, index) => {
      const y = atY + AXIS + index * ROW + (ROW - HIGH) / 2;
      const [a, b] = barEnds(bar, span);
      // what has no end points on beyond the axis
      const onRight = bar.to === null ? [pointed(at(b, y + HIGH / 2), TIP)] : [];
      const onLeft = bar.from === null ? [pointed(at(a, y + HIGH / 2), -TIP)] : [];
      const around = [at(a, y), at(b, y), ...onRight, at(b, y + HIGH), at(a, y + HIGH), ...onLeft];
      const text = y + HIGH / 2 + TEXT_SIZE * 0.36;
      return [
        textElement(bar.name, atX + left - GAP, text, { anchor: 'end' }),
        ...shapeElements(polygon(bar.form, ...around), paper),
        textElement(wordsOf(bar), atX + left + LONG + GAP, text),
      ];
    }),
    x('path', {
      d: `M${length(along(0))} ${length(atY + AXIS - 2)}V${length(bottom)}`,
      stroke: '#000',
      'stroke-width': '0.6',
      fill: 'none',
    }),
  ];
}
