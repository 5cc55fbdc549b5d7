import { hull, type Interval } from '../../quantities/interval.ts';
import { part } from '../inputs/part.ts';
import type { Case } from '../judging/case.ts';
import { evaluateSide, folded, greatest, type Side } from '../judging/side.ts';
import { negated, rises, term } from '../judging/term.ts';
import { alongX, baseEnds, onHorizontal } from '../sides/base.ts';
import { turnedRound } from '../sides/extent.ts';
import { housingEnds } from '../sides/housing.ts';
import { pointsBack } from '../sides/points-back.ts';
import { sweptAway, sweptToward, turningRadii } from '../sides/profile.ts';
import { placesOnTable } from './place.ts';

/** A family on the rotary: in every kind that it may be, and whether it surely is held there. */
export interface Work {
  readonly cases: readonly Case[];
  readonly sure: boolean;
}

interface FreeLength {
  /** of the table beside rotary and work, mm */
  readonly left: Interval;
  readonly right: Interval;
}

/**
 * Table length that stays free on each side of rotary and work, along X: from the table's end to the base,
 * the housing or the swept work, whichever reaches further, less a gap.
 */
function freeLength(ground: Case, works: readonly Work[]): FreeLength | null {
  if (ground.machine.builtIn) return null;
  const [left, right] = [reachBeside(ground, works, 'left'), reachBeside(ground, works, 'right')];
  const { tableX } = ground.machine;
  const gap = ground.shop.assume.placeGap;
  const { x } = ground.place;
  return {
    left: { low: tableX.low / 2 + x - left.high - gap, high: tableX.high / 2 + x - left.low - gap },
    right: { low: tableX.low / 2 - x - right.high - gap, high: tableX.high / 2 - x - right.low - gap },
  };
}

/** How far rotary and works reach to one side of the rotary center. */
function reachBeside(ground: Case, works: readonly Work[], side: 'left' | 'right'): Interval {
  return folded('greatest', [
    evaluateSide(BASE_BESIDE[side], ground),
    housingBeside(ground, side),
    ...works.map((work) => reachOf(work, side)),
  ]);
}

/** Over every kind that the family may be; one that may not be held after all may take no room. */
function reachOf({ cases, sure }: Work, side: 'left' | 'right'): Interval {
  const { low, high } = hull(cases.map((of) => evaluateSide(WORK_BESIDE[side], of)));
  return { low: sure ? low : Number.NEGATIVE_INFINITY, high };
}

const baseBeside = (side: 'left' | 'right'): Side =>
  greatest(['rotary', 'mounting', 'turn'], (of) => {
    const base = baseEnds(of, 'x');
    return [side === 'right' ? base.high : negated(base.low)];
  });
const BASE_BESIDE = { left: baseBeside('left'), right: baseBeside('right') };

function housingBeside(of: Case, side: 'left' | 'right'): Interval {
  const boxes = of.rotary.row?.housing ?? [];
  const { mounting, place } = of;
  if (mounting === 'built-in') return { low: Number.NEGATIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
  const ends = boxes.map((box) => housingEnds(box, { mounting, turned: place.turned }, 'x'));
  const reach = Math.max(
    Number.NEGATIVE_INFINITY,
    ...ends.map(([from, to]) => (side === 'right' ? to : -from)),
  );
  return { low: reach, high: reach };
}

const workBeside = (side: 'left' | 'right'): Side =>
  greatest(['part', 'rotary', 'mounting', 'turn'], (of) => {
    const toRight = (side === 'right') !== pointsBack(of.mounting, turnedRound(of), 'x');
    if (of.rotary.axes === 2) {
      if (alongX(of)) return turningRadii(of);
      return toRight ? sweptAway(of) : sweptToward(of);
    }
    if (!alongX(of)) return turningRadii(of);
    const uses = { f: rises(part.fixtureHeight), h: rises(part.height) };
    return toRight ? [term('far end of the part', uses, (values) => values.f + values.h)] : [];
  });
const WORK_BESIDE = { left: workBeside('left'), right: workBeside('right') };

/** Whole vises, with their gaps, in a length; their jaws within reach of the spindle. */
const visesIn = (free: number, vise: number, gap: number): number =>
  Number.isFinite(free) ? Math.max(0, Math.floor((free + gap) / (vise + gap) + 1e-9)) : 0;

/** The table beside rotary and work: what stays free on each side, mm, and how many vises find room there. */
export interface TableSpace extends FreeLength {
  readonly stationsLeft: Interval;
  readonly stationsRight: Interval;
}

/** Null where there is no table beside it, or where a vise on it would not hold its work toward a level tool. */
export function tableSpace(ground: Case, works: readonly Work[]): TableSpace | null {
  if (onHorizontal(ground)) return null;
  const free = freeLength(ground, works);
  if (free === null) return null;
  const { viseWidth, assume } = ground.shop;
  const stations = (side: Interval): Interval => {
    const count = (end: 'low' | 'high'): number => {
      const vise = end === 'low' ? viseWidth.high : viseWidth.low;
      // beyond the travel no vise is reached: what the free length overhangs it is lost at its outer end
      const lost = Math.max(0, (ground.machine.tableX[end] - ground.machine.travelX[end]) / 2);
      return visesIn(side[end] - lost, vise, assume.viseGap);
    };
    return { low: count('low'), high: count('high') };
  };
  return { ...free, stationsLeft: stations(free.left), stationsRight: stations(free.right) };
}

/**
 * Vises that stand beside the rotary (or on the built-in faceplate) while it is on; fewest and most. Null on a
 * horizontal spindle: a vise on the table does not hold its work toward a level tool.
 */
export function viseStations(ground: Case, works: readonly Work[]): Interval | null {
  if (onHorizontal(ground)) return null;
  if (ground.machine.builtIn) return onFaceplate(ground);
  const space = tableSpace(ground, works);
  if (space === null) return null;
  const { stationsLeft: left, stationsRight: right } = space;
  return { low: left.low + right.low, high: left.high + right.high };
}

/**
 * The most vises that find room beside the rotary, wherever on the table it stands and whatever it holds. Null where
 * `viseStations` is null, and for a table that is built in: no place changes what it takes.
 */
export function mostStations(ground: Case): number | null {
  if (onHorizontal(ground)) return null;
  const { viseWidth, assume } = ground.shop;
  const { tableX, travelX } = ground.machine;
  const lost = Math.max(0, (tableX.high - travelX.high) / 2);
  const { from, to } = placesOnTable(ground, 'x');
  const freeAt = (x: number): FreeLength | null =>
    freeLength({ ...ground, place: { ...ground.place, x } }, []);
  const [left, middle, right] = [freeAt(to), freeAt(0), freeAt(from)];
  if (left === null || middle === null || right === null) return null;
  const vises = (length: number): number => visesIn(length, viseWidth.low, assume.viseGap);
  // either on both sides, with one gap more to leave out, or all on one side with the rotary at the other end of the table
  const both = middle.left.high + middle.right.high - 2 * lost + assume.viseGap;
  const onOne = [left.left.high, right.right.high].map((free) => Math.min(free, tableX.high) - lost);
  return Math.max(...[both, ...onOne].map(vises));
}

/** Vises side by side on a round faceplate: the corners of their beds may stand over its edge a little. */
function onFaceplate(of: Case): Interval {
  const { viseWidth, viseLength, assume } = of.shop;
  const { faceplate } = of.rotary;
  const count = (plate: number, wide: number, long: number): number => {
    const across = Math.sqrt(Math.max(0, (plate + assume.bedOverhang) ** 2 - long ** 2));
    if (!Number.isFinite(across)) return 0;
    return Math.max(0, Math.floor((across + assume.viseGap) / (wide + assume.viseGap) + 1e-9));
  };
  return {
    low: count(faceplate.low, viseWidth.high, viseLength.high),
    high: count(faceplate.high, viseWidth.low, viseLength.low),
  };
}
