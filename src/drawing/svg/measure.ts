import type { Element } from 'xast';
import { x } from 'xastscript';
import { type Keys, keyOfDimension } from '../keys.ts';
import { isLevel, type Lanes } from '../lanes.ts';
import { type Dimension, type Point, SIDES } from '../scene.ts';
import { onPaper, type Paper, pathOf, TEXT_SIZE, textWidth } from './paper.ts';
import { textElement } from './text.ts';

/** mm on paper between two rows of measures. */
export const LANE = 5.6;
/** from the picture to the first of them */
export const FIRST_LANE = 6;
const BEYOND = 1.2;
const FROM_POINT = 0.8;
const ARROW = 2.2;

export interface Measuring {
  readonly paper: Paper;
  readonly keys: Keys;
  readonly lanes: Lanes;
  /** the picture on paper: left, top, right, bottom */
  readonly box: readonly [left: number, top: number, right: number, bottom: number];
}

/** All measures around a picture, each with its letter and number. */
export const measureElements = (drawing: Measuring): readonly Element[] =>
  SIDES.flatMap((side) =>
    drawing.lanes[side].flatMap((row, lane) => row.flatMap((each) => measure(each, lane, drawing))),
  );

function measure(dimension: Dimension, lane: number, drawing: Measuring): readonly Element[] {
  const { paper, keys, box } = drawing;
  const level = isLevel(dimension);
  const away = FIRST_LANE + lane * LANE;
  const [left, top, right, bottom] = box;
  const at = { left: left - away, right: right + away, above: top - away, below: bottom + away }[
    dimension.side
  ];
  const points = [onPaper(paper, dimension.from), onPaper(paper, dimension.to)] as const;
  const ends = points.map((point): Point => (level ? [point[0], at] : [at, point[1]])) as [Point, Point];
  const extensions = points.map((point, index) => extension(point, ends[index] ?? point)).join('');
  const stroke = dimension.tight ? '0.5' : '0.18';
  return [
    x('path', {
      d: extensions,
      stroke: '#000',
      'stroke-width': '0.13',
      'stroke-dasharray': '1 0.6',
      fill: 'none',
    }),
    x('path', { d: lineWithArrows(ends), stroke: '#000', 'stroke-width': stroke, fill: 'none' }),
    words(dimension, keyOfDimension(keys, dimension), ends, level),
  ];
}

/** From a little beside the point to a little beyond the line. */
function extension(from: Point, to: Point): string {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long < FROM_POINT) return '';
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  return pathOf([
    [from[0] + ux * FROM_POINT, from[1] + uy * FROM_POINT],
    [to[0] + ux * BEYOND, to[1] + uy * BEYOND],
  ]);
}

/** Arrows stand inside where there is room for them, else outside, pointing in. */
function lineWithArrows([from, to]: readonly [Point, Point]): string {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = long === 0 ? [0, 1] : [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const inside = long > 3 * ARROW;
  const way = inside ? 1 : -1;
  const tip = (point: Point, sign: number): string => {
    const back: Point = [point[0] + sign * ux * ARROW, point[1] + sign * uy * ARROW];
    const [wx, wy] = [-uy * ARROW * 0.22, ux * ARROW * 0.22];
    return pathOf([[back[0] + wx, back[1] + wy], point, [back[0] - wx, back[1] - wy]]);
  };
  const rest = inside ? 0 : ARROW * 2;
  const outer: readonly Point[] = [
    [from[0] - ux * rest, from[1] - uy * rest],
    [to[0] + ux * rest, to[1] + uy * rest],
  ];
  return pathOf(outer) + tip(from, way) + tip(to, -way);
}

/** Letter and number along the line where it is long enough; else the letter alone, and the number in the list. */
function words(
  dimension: Dimension,
  key: string,
  [from, to]: readonly [Point, Point],
  level: boolean,
): Element {
  const [x1, y1] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const text = `${key}\u2002${dimension.text}`;
  const look = { anchor: 'middle', bold: dimension.tight, rim: true } as const;
  if (long > textWidth(text, TEXT_SIZE) + 2 * ARROW) {
    return level
      ? textElement(text, x1, y1 - 1.5, look)
      : textElement(text, x1 - 1.2, y1, { ...look, upward: true });
  }
  if (long > LEAST_FOR_LETTER) {
    return level ? textElement(key, x1, y1 - 1.2, look) : textElement(key, x1 - 2.6, y1 + 1.1, look);
  }
  return level
    ? textElement(key, Math.max(from[0], to[0]) + ARROW * 2 + 2, y1 + 1.1, look)
    : textElement(key, x1, Math.min(from[1], to[1]) - ARROW * 2 - 0.8, look);
}

const LETTER = 3;
/** mm on paper of a measure that has its letter between its arrows */
export const LEAST_FOR_LETTER = LETTER + 2 * ARROW;
/** how far the letter of a shorter one reaches beyond it */
export const LETTER_REACH = ARROW * 2 + 2 + LETTER;
