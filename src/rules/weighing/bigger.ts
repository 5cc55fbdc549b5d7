import type { Stated } from '../../catalog/catalog.ts';
import type { Family } from '../arranging/family.ts';
import type { Bounded } from '../check-result.ts';
import type { BestOf } from '../classes/best-of.ts';
import { shareOf, type Whether } from '../classes/hours-share.ts';
import { swingOf } from '../classes/rules/swing.ts';
import type { Bigger, Size, SizeUp } from '../decision-classes.ts';
import { bounded } from '../judging/value.ts';
import type { Judged } from './judged.ts';

/**
 * Would a bigger one help? The next size up of the winner's class: the families that turn within it and not
 * within the winner, with their hours, and what it costs more in price, mass and room.
 */
export function biggerOf(
  winner: Judged | null,
  all: readonly Judged[],
  families: readonly Family[],
  bestOf: BestOf,
): Bigger | null {
  if (winner === null) return null;
  const chosen = sizeOf(winner);
  if (chosen === null) return null;
  const next = nextUp(winner, chosen.swing, all, bestOf);
  return {
    chosen,
    coverage: bounded(winner.coverage),
    viseStations: stations(winner),
    next: next === null ? null : sizeUp(chosen, next, families),
  };
}

const stations = ({ measures }: Judged): Bounded =>
  measures.viseStations === null ? null : bounded(measures.viseStations);

/** The best arrangement with the next larger swing of the same class. */
function nextUp(winner: Judged, swing: number, all: readonly Judged[], bestOf: BestOf): Judged | null {
  const larger = all.flatMap((judged) => {
    const { rotary } = judged.setUp.candidate;
    const same = rotary.class === winner.setUp.candidate.rotary.class;
    return same && rotary.swing.low === rotary.swing.high && rotary.swing.low > swing + 1e-9
      ? [{ judged, swing: rotary.swing.low }]
      : [];
  });
  const least = Math.min(...larger.map((each) => each.swing));
  const ofThatSize = larger.filter((each) => each.swing === least).map(({ judged }) => judged);
  const { key } = winner.setUp.candidate.machine;
  const onTheSame = ofThatSize.filter(({ setUp }) => setUp.candidate.machine.key === key);
  // on the same machine where it fits there, so that only the size differs
  return bestOf(onTheSame.some(({ passes }) => passes === 'yes') ? onTheSame : ofThatSize);
}

const orNull = (value: Stated): Bounded => (value === 'unknown' ? null : value);

/** Null where the catalog does not say how much it turns. */
function sizeOf({ setUp: { candidate } }: Judged): Size | null {
  const { rotary, machine, mounting } = candidate;
  if (rotary.swing.low !== rotary.swing.high) return null;
  const along = mounting.endsWith('-x') ? rotary.baseAlong : rotary.baseAcross;
  return {
    rotary: rotary.row?.id ?? null,
    machine: machine.key,
    swing: rotary.swing.low,
    price: orNull(rotary.row?.price ?? machine.row.price),
    mass: orNull(rotary.row?.mass ?? machine.row.mass),
    length: bounded(rotary.row === null ? rotary.faceplate : along),
  };
}

function sizeUp(chosen: Size, next: Judged, families: readonly Family[]): SizeUp | null {
  const size = sizeOf(next);
  if (size === null) return null;
  const isAdded = (family: Family): Whether => {
    const { low, high } = swingOf(family);
    if (low > chosen.swing + 1e-9 && high <= size.swing + 1e-9) return 'yes';
    return high > chosen.swing + 1e-9 && low <= size.swing + 1e-9 ? 'perhaps' : 'no';
  };
  const added = families.filter((family) => isAdded(family) !== 'no');
  const sum = (end: 'low' | 'high', wanted: (so: Whether) => boolean): number =>
    added.reduce((hours, family) => hours + (wanted(isAdded(family)) ? family.hours[end] : 0), 0);
  return {
    ...size,
    addsParts: added.map(({ name }) => name),
    addsHours: bounded({ low: sum('low', (so) => so === 'yes'), high: sum('high', () => true) }),
    addsShare: bounded(shareOf(families, isAdded).value),
    morePrice: difference(size.price, chosen.price),
    moreMass: difference(size.mass, chosen.mass),
    moreLength: difference(size.length, chosen.length),
    best: next.id,
    bestPasses: next.passes,
    coverage: bounded(next.coverage),
    viseStations: stations(next),
  };
}

/** Null where one of the two is not known. */
const difference = (a: Bounded, b: Bounded): Bounded =>
  typeof a === 'number' && typeof b === 'number' ? a - b : null;
