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

/** The number of a thing in a ring, with a line to the thing where it stands beside it. */
export function markElements(mark: Mark, paper: Paper, keys: Keys): readonly Element[] {
  const [atX, atY] = onPaper(paper, mark.at);
  const [wayX, wayY] = WAYS[mark.stands];
  const [cx, cy] = [atX + wayX * AWAY, atY + wayY * AWAY];
  const leader = pathOf([
    [atX, atY],
    [cx, cy],
  ]);
  return [
    ...(mark.stands === 'on'
      ? []
      : [
          x('path', { d: leader, stroke: '#000', 'stroke-width': '0.18', fill: 'none' }),
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
    textElement(keyOfMark(keys, mark), cx, cy + TEXT_SIZE * 0.36, { anchor: 'middle' }),
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
