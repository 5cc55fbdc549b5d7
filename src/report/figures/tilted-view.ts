import type { Point } from '../../drawing/scene.ts';
import { heightAt, reachAt } from '../../mechanics/geometry/rotate.ts';
import type { Arrangement } from '../../rules/decision.ts';
import { isTurnedRound } from '../../rules/sides/extent.ts';
import { pointsBack } from '../../rules/sides/points-back.ts';
import { plain, type Rows } from './known-stack.ts';

/** How the stack is looked at: along its tilt axis (where nothing tilts: along the rotary axis or across it), with the machine's own left or front on the left. */
export interface TiltedView {
  /** the table's axis that runs from left to right in the picture */
  readonly level: 'x' | 'y';
  readonly seenFrom: string;
  /** 1 where v of the rotary points to the right */
  readonly sign: 1 | -1;
  /** height of the tilt axis in the picture: above the table, which a built-in one has none of */
  readonly axis: number;
  /** of the rotary center from the middle of the table, in the picture; null where it is built in */
  readonly place: number | null;
  readonly plates: number;
  /** the spindle is level: the picture is laid over, so that it comes from the right */
  readonly laidOver: boolean;
}

/** Null where nothing tilts, or where it is not known how. */
export function tiltedView(arrangement: Arrangement, rows: Rows): TiltedView | null {
  const { machine, rotary, table } = rows;
  if (machine.spindle === 'unknown' || table.tilt === null) return null;
  if (rotary !== null) return machine.spindle === 'vertical' ? alongAxis(arrangement, rows) : null;
  const { builtIn } = machine;
  if (builtIn === null || builtIn.tiltAxis === 'unknown' || builtIn.leans === 'unknown') return null;
  const level = builtIn.tiltAxis === 'along-x' ? 'y' : 'x';
  const laidOver = machine.spindle === 'horizontal';
  return {
    level,
    seenFrom: (laidOver ? SEEN_LAID_OVER : SEEN_FROM)[level],
    sign: isTurnedRound(builtIn) ? -1 : 1,
    axis: 0,
    place: null,
    plates: 0,
    laidOver,
  };
}

/** On a table, along the tilt axis, or along the rotary axis where nothing tilts. Null where it is not known how it stands. */
export function alongAxis(arrangement: Arrangement, { rotary }: Rows): TiltedView | null {
  const { mounting, turned, place } = arrangement;
  const center = plain(rotary?.centerHeight);
  if (mounting === 'built-in' || place === null || center === null) return null;
  const level = mounting.endsWith('along-x') ? 'y' : 'x';
  const plates = arrangement.plates.reduce((sum, { thickness }) => sum + thickness, 0);
  return {
    level,
    seenFrom: SEEN_FROM[level],
    sign: pointsBack(mounting, turned, level) ? -1 : 1,
    axis: center + plates,
    place: place[level],
    plates,
    laidOver: false,
  };
}

/** The same from the side, the rotary axis from left to right. */
export function acrossAxis(arrangement: Arrangement, rows: Rows): TiltedView | null {
  const view = alongAxis(arrangement, rows);
  const { mounting, turned, place } = arrangement;
  if (view === null || place === null) return null;
  const level = view.level === 'x' ? 'y' : 'x';
  const sign = pointsBack(mounting, turned, level) ? -1 : 1;
  return { ...view, level, seenFrom: SEEN_FROM[level], sign, place: place[level] };
}

const SEEN_FROM = { x: 'from the door', y: 'from the right, the door on the left' } as const;

/** The tilt axis of a level spindle is level itself, or upright: then it is seen from above. */
const SEEN_LAID_OVER = {
  x: 'from above, the spindle on the right',
  y: 'from the side, the spindle on the right',
} as const;

/** A point of the work, v across the tilt axis and w above it, once the work is tilted. */
export const tilted = ({ sign, axis }: TiltedView, v: number, w: number, tilt: number): Point => [
  sign * reachAt(v, w, tilt),
  axis + heightAt(v, w, tilt),
];

/** A point that does not tilt, v across the tilt axis and a height in the picture. */
export const still = ({ sign }: TiltedView, v: number, height: number): Point => [sign * v, height];
