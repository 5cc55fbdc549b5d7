import type { Element } from 'xast';
import { x } from 'xastscript';
import type { Keys } from '../keys.ts';
import { isLevel, type Lanes, lanesOf, spanOf } from '../lanes.ts';
import { boundsOf } from '../outline.ts';
import type { Panel, Point, Side } from '../scene.ts';
import { barElements, barsSize } from './bars.ts';
import { LABEL_AWAY, labelElement, MARK_REACH, markElements } from './mark.ts';
import { FIRST_LANE, LANE, LEAST_FOR_LETTER, LETTER_REACH, measureElements } from './measure.ts';
import { LINE_HEIGHT, length, type Paper, TEXT_SIZE, textWidth } from './paper.ts';
import { shapeElements } from './shape.ts';
import { textElement } from './text.ts';

/** A panel with what stands around it, as large as it comes out on paper, mm. */
export interface PlacedPanel {
  readonly panel: Panel;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
}

/** So many mm on paper a measure keeps for itself. */
const LEAST_ON_PAPER = 16;
const EDGE = 4;

const roomBeside = (rows: number): number => (rows === 0 ? EDGE : FIRST_LANE + (rows - 1) * LANE + EDGE);

interface Room {
  readonly lanes: Lanes;
  readonly around: Readonly<Record<Side, number>>;
}

function roomOf(panel: Panel, scale: number): Room {
  const lanes = lanesOf(panel.dimensions, LEAST_ON_PAPER * scale);
  const beside = (side: Side): number =>
    Math.max(
      roomBeside(lanes[side].length) + labelRoom(panel, side, scale),
      ringRoom(panel, side, scale),
      letterRoom(panel, side, scale),
    );
  const around = {
    left: beside('left'),
    right: beside('right'),
    above: beside('above'),
    below: beside('below'),
  };
  return { lanes, around };
}

/** From a point to the edges of the picture, mm on paper. */
function insetOf(panel: Panel, [x, y]: Point, side: Side, scale: number): number {
  const { left, right, low, high } = boundsOf(panel);
  return { left: x - left, right: right - x, above: high - y, below: y - low }[side] / scale;
}

/** How far rings stand out of the picture. */
const ringRoom = (panel: Panel, side: Side, scale: number): number =>
  Math.max(
    0,
    ...panel.marks
      .filter(({ stands }) => stands === side)
      .map(({ at }) => MARK_REACH - insetOf(panel, at, side, scale)),
  );

/** How far the letters of short measures stand out, which are written behind their upper or right end. */
function letterRoom(panel: Panel, side: Side, scale: number): number {
  if (side === 'left' || side === 'below') return 0;
  const short = panel.dimensions.filter((each) => {
    const [low, high] = spanOf(each);
    return isLevel(each) === (side === 'right') && (high - low) / scale < LEAST_FOR_LETTER;
  });
  return Math.max(
    0,
    ...short.flatMap(({ from, to }) =>
      [from, to].map((end) => LETTER_REACH - insetOf(panel, end, side, scale)),
    ),
  );
}

/** How far words stand out of the picture. */
function labelRoom(panel: Panel, side: Side, scale: number): number {
  const out = panel.labels.map(({ at, text, side: own }): number => {
    const wide = textWidth(text, TEXT_SIZE);
    const [inLeft, inRight] = [insetOf(panel, at, 'left', scale), insetOf(panel, at, 'right', scale)];
    if (own === 'above' || own === 'below') return side === own ? LINE_HEIGHT : 0;
    if (own === 'on') return wide / 2 - (side === 'left' ? inLeft : side === 'right' ? inRight : wide);
    return side === own ? wide + LABEL_AWAY - (own === 'left' ? inLeft : inRight) : 0;
  });
  return Math.max(0, ...out);
}

export function placedPanel(panel: Panel, scale: number): PlacedPanel {
  if (panel.bars !== undefined) {
    const { width, height } = barsSize(panel.bars);
    return { panel, scale, width: width + 2 * EDGE, height: height + LINE_HEIGHT };
  }
  const { left, right, low, high } = boundsOf(panel);
  const { around } = roomOf(panel, scale);
  return {
    panel,
    scale,
    width: Math.max(
      (right - left) / scale + around.left + around.right,
      textWidth(panel.title, TEXT_SIZE) + 2 * EDGE,
    ),
    height: (high - low) / scale + around.above + around.below + LINE_HEIGHT,
  };
}

/** The panel as a group, its upper left at a place on the sheet. */
export function panelElement({ panel, scale }: PlacedPanel, keys: Keys, atX: number, atY: number): Element {
  const title = textElement(panel.title, EDGE, TEXT_SIZE, { bold: true });
  const transform = `translate(${length(atX)} ${length(atY)})`;
  if (panel.bars !== undefined) {
    return x('g', { transform }, [title, ...barElements(panel.bars, EDGE, LINE_HEIGHT)]);
  }
  const { left, right, low, high } = boundsOf(panel);
  const { lanes, around } = roomOf(panel, scale);
  const [boxLeft, boxTop] = [around.left, around.above + LINE_HEIGHT];
  const paper: Paper = { scale, left: left - boxLeft * scale, high: high + boxTop * scale };
  const box = [boxLeft, boxTop, boxLeft + (right - left) / scale, boxTop + (high - low) / scale] as const;
  return x('g', { transform }, [
    title,
    ...panel.shapes.flatMap((shape) => shapeElements(shape, paper)),
    ...measureElements({ paper, keys, lanes, box }),
    ...panel.labels.map((label) => labelElement(label, paper)),
    ...markElements(panel.marks, paper, keys, LINE_HEIGHT),
  ]);
}
