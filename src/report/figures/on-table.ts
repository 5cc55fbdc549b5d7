import type { Rotary } from '../../catalog/catalog.ts';
import type { Point } from '../../drawing/scene.ts';
import type { Arrangement } from '../../rules/decision.ts';
import { pointsBack } from '../../rules/sides/points-back.ts';
import { plain } from './known-stack.ts';

/** How a rotary lies on its table, seen from above: X to the right, Y to the rear, from the middle of the table. */
export interface OnTable {
  /** the rotary center */
  readonly center: Point;
  /** a stretch along and across the rotary's own axis, as the corners of a rectangle at the lower left and upper right */
  readonly rectangle: (along: Stretch, across: Stretch) => readonly [Point, Point];
}

export type Stretch = readonly [low: number, high: number];

/** Null where it does not stand on a table. */
export function onTable({ mounting, place, turned }: Arrangement): OnTable | null {
  if (mounting === 'built-in' || place === null) return null;
  const center: Point = [place.x, place.y];
  const alongX = mounting.endsWith('along-x');
  const stretch = (axis: 'x' | 'y', along: Stretch, across: Stretch): Stretch => {
    const [low, high] = (axis === 'x') === alongX ? along : across;
    return pointsBack(mounting, turned, axis) ? [-high, -low] : [low, high];
  };
  return {
    center,
    rectangle: (along, across) => {
      const [left, right] = stretch('x', along, across);
      const [front, rear] = stretch('y', along, across);
      return [
        [center[0] + left, center[1] + front],
        [center[0] + right, center[1] + rear],
      ];
    },
  };
}

/** The base beside the rotary center, along and across its axis; null where the catalog does not say. */
export function baseOf({
  base,
  faceOffset,
  tilt,
}: Rotary): readonly [along: Stretch, across: Stretch] | null {
  const [along, across, centerAcross] = [plain(base.along), plain(base.across), plain(base.centerAcross)];
  // on a level axis the center is the middle of the faceplate
  const centerAlong = tilt === null ? plain(faceOffset) : plain(base.centerAlong);
  if (along === null || across === null || centerAlong === null || centerAcross === null) return null;
  return [
    [-centerAlong, along - centerAlong],
    [-centerAcross, across - centerAcross],
  ];
}
