import type { Interval } from '../quantities/interval.ts';
import type { Case } from './case.ts';
import { part } from './inputs/part.ts';
import { evaluateTerm, folded } from './side.ts';
import { alongX, baseEnds } from './sides/base.ts';
import { turnedRound } from './sides/extent.ts';
import { sweptAway, sweptToward, turningRadii } from './sides/profile.ts';
import { rises, type Term, term } from './term.ts';

export interface FreeLength {
  /** of the table beside rotary and work, mm */
  readonly left: Interval;
  readonly right: Interval;
}

/**
 * Table length that stays free on each side of rotary and work, along X: from the table's end to the base,
 * the housing or the swept work, whichever reaches further, less a gap.
 */
export function freeLength(cases: readonly Case[]): FreeLength | null {
  const first = cases[0];
  if (first === undefined || first.machine.builtIn) return null;
  const left = folded(
    'greatest',
    cases.map((of) => reachBeside(of, 'left')),
  );
  const right = folded(
    'greatest',
    cases.map((of) => reachBeside(of, 'right')),
  );
  const { tableX } = first.machine;
  const gap = first.shop.assume.placeGap;
  const { x } = first.place;
  return {
    left: { low: tableX.low / 2 + x - left.high - gap, high: tableX.high / 2 + x - left.low - gap },
    right: { low: tableX.low / 2 - x - right.high - gap, high: tableX.high / 2 - x - right.low - gap },
  };
}

/** How far rotary and work reach to one side of the rotary center. */
function reachBeside(of: Case, side: 'left' | 'right'): Interval {
  const base = baseEnds(of, 'x');
  const own = side === 'right' ? evaluateTerm(base.high, of) : flipped(evaluateTerm(base.low, of));
  return folded('greatest', [
    own,
    housingBeside(of, side),
    ...(of.part === null ? [] : workBeside(of, side)),
  ]);
}

const flipped = ({ low, high }: Interval): Interval => ({ low: -high, high: -low });

function housingBeside(of: Case, side: 'left' | 'right'): Interval {
  const boxes = of.rotary.row?.housing ?? [];
  const ends = boxes.map((box) => (alongX(of) ? box.along : box.across));
  const toRight = (side === 'right') !== turnedRound(of);
  const reach = Math.max(Number.NEGATIVE_INFINITY, ...ends.map(([from, to]) => (toRight ? to : -from)));
  return { low: reach, high: reach };
}

function workBeside(of: Case, side: 'left' | 'right'): readonly Interval[] {
  const toRight = (side === 'right') !== turnedRound(of);
  const evaluated = (terms: readonly Term[]): readonly Interval[] =>
    terms.map((each) => evaluateTerm(each, of));
  if (of.rotary.axes === 2)
    return evaluated(alongX(of) ? turningRadii(of) : toRight ? sweptAway(of) : sweptToward(of));
  if (!alongX(of)) return evaluated(turningRadii(of));
  const uses = { f: rises(part.fixtureHeight), h: rises(part.height) };
  return toRight ? evaluated([term('far end of the part', uses, (values) => values.f + values.h)]) : [];
}

/** Whole vises, with their gaps, in a length; their jaws within reach of the spindle. */
const visesIn = (free: number, vise: number, gap: number): number =>
  Number.isFinite(free) ? Math.max(0, Math.floor((free + gap) / (vise + gap) + 1e-9)) : 0;

/** Vises that stand beside the rotary (or on the built-in faceplate) while it is on; fewest and most. */
export function viseStations(cases: readonly Case[]): Interval | null {
  const first = cases[0];
  if (first === undefined) return null;
  if (first.machine.builtIn) return onFaceplate(first);
  const free = freeLength(cases);
  if (free === null) return null;
  const { viseWidth, assume } = first.shop;
  const count = (end: 'low' | 'high'): number => {
    const vise = end === 'low' ? viseWidth.high : viseWidth.low;
    // beyond the travel no vise is reached: what the free length overhangs it is lost at its outer end
    const lost = Math.max(0, (first.machine.tableX[end] - first.machine.travelX[end]) / 2);
    const stations = (side: Interval) => visesIn(side[end] - lost, vise, assume.viseGap);
    return stations(free.left) + stations(free.right);
  };
  return { low: count('low'), high: count('high') };
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
