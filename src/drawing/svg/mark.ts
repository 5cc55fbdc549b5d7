import type { Element } from 'xast';
import { x } from 'xastscript';
import { type Keys, keyOfMark } from '../keys.ts';
import type { Label, Mark, Point, Side } from '../scene.ts';
import { length, onPaper, type Paper, pathOf, TEXT_SIZE } from './paper.ts';
import { textElement } from './text.ts';

const RADIUS = 2.3;
const AWAY = 8;
export const LABEL_AWAY = 1.5;
/** How far a number beside a thing comes, its ring counted in. */
export const MARK_REACH = AWAY + RADIUS;

const WAYS: Readonly<Record<Side | 'on', Point>> = {
  left: [-1, 0],
  right: [1, 0],
  above: [0, -1],
  below: [0, 1],
  on: [0, 0],
};

/** Degrees from the way that is asked for, in which a ring may stand instead. */
const ASIDE = [0, 40, -40, 80, -80, 120, -120];
/** mm between two rings */
const BETWEEN = 0.5;

/** The numbers of things in rings, each where it is asked for or as near to that as no other ring stands. */
export function markElements(
  marks: readonly Mark[],
  paper: Paper,
  keys: Keys,
  /** mm from the top of the panel, where its title stands */
  highest: number,
): readonly Element[] {
  const taken: Point[] = [];
  // what stands on its thing cannot give way without a line
  const ordered = marks.toSorted((a, b) => Number(b.stands === 'on') - Number(a.stands === 'on'));
  return ordered.flatMap((mark) => {
    const all = placesOf(mark, paper);
    const below = all.filter(([, y]) => y - RADIUS >= highest);
    const places = below.length === 0 ? all : below;
    const ring = places.find((place) => taken.every((other) => isApart(place, other))) ?? places[0] ?? [0, 0];
    taken.push(ring);
    return markElement(onPaper(paper, mark.at), ring, keyOfMark(keys, mark));
  });
}

const isApart = ([x1, y1]: Point, [x2, y2]: Point): boolean =>
  Math.hypot(x1 - x2, y1 - y2) >= 2 * RADIUS + BETWEEN;

/** Where a ring may stand, the first the way that is asked for. */
function placesOf({ at, stands }: Mark, paper: Paper): readonly Point[] {
  const [x, y] = onPaper(paper, at);
  const [wayX, wayY] = stands === 'on' ? WAYS.above : WAYS[stands];
  const around = [AWAY, AWAY * 1.6].flatMap((away) =>
    ASIDE.map((degrees): Point => {
      const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      return [x + away * (wayX * cos - wayY * sin), y + away * (wayX * sin + wayY * cos)];
    }),
  );
  return stands === 'on' ? [[x, y], ...around] : around;
}

/** A number in its ring, with a line to the thing where it stands beside it. */
function markElement(at: Point, [cx, cy]: Point, key: string): readonly Element[] {
  const [atX, atY] = at;
  const isOn = cx === atX && cy === atY;
  return [
    ...(isOn
      ? []
      : [
          x('path', { d: pathOf([at, [cx, cy]]), stroke: '#000', 'stroke-width': '0.18', fill: 'none' }),
          x('circle', { cx: length(atX), cy: length(atY), r: '0.5', fill: '#000' }),
        ]),
    x('circle', {
      cx: length(cx),
      cy: length(cy),
      r: String(RADIUS),
      fill: '#fff',
      stroke: '#000',
      'stroke-width': '0.18',
    }),
    textElement(key, cx, cy + TEXT_SIZE * 0.36, { anchor: 'middle' }),
  ];
}

/** What stands at an axis of a chart. */
export function labelElement({ at, text, side }: Label, paper: Paper): Element {
  const [atX, atY] = onPaper(paper, at);
  const [wayX, wayY] = WAYS[side];
  const anchor = side === 'left' ? 'end' : side === 'right' ? 'start' : 'middle';
  const drop = wayY < 0 ? 0 : wayY > 0 ? TEXT_SIZE * 0.72 : TEXT_SIZE * 0.36;
  return textElement(text, atX + wayX * LABEL_AWAY, atY + wayY * LABEL_AWAY + drop, { anchor, rim: true });
}
