import type { BuiltIn, Machine, Rotary } from '../../catalog/catalog.ts';
import { blockPlanRadius } from '../../mechanics/geometry/block-plan-radius.ts';
import type { Part, Uncertain } from '../../questions/answers.ts';
import type { Arrangement, Bounded, Decision } from '../../rules/decision.ts';
import type { Path } from '../blocks/path.ts';
import { machineAt, rotaryAt } from '../catalog-row.ts';

/** A number of a row or an answer where it is one; null where it is a range, not stated or not there. */
export const plain = (value: Uncertain | Bounded | 'unknown' | undefined): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;

/** A part as it stands: sizes in mm, null where not known. */
export interface KnownPart {
  /** what it sweeps as it turns about its own axis, and how far that stands off the rotary axis, together */
  readonly radius: number | null;
  readonly eccentricity: number | null;
  readonly height: number | null;
  /** distances of its side faces from its axis */
  readonly faces: readonly (number | null)[];
  readonly fixtureDiameter: number | null;
  readonly fixtureHeight: number | null;
}

export function knownPart(part: Part): KnownPart {
  const { length, width, height, isRound } = sizeOf(part);
  const half = isRound
    ? halfOf(length)
    : length === null || width === null
      ? null
      : blockPlanRadius(length, width);
  const eccentricity = plain(part.eccentricity);
  return {
    radius: half === null || eccentricity === null ? null : half + eccentricity,
    eccentricity,
    height,
    faces: isRound ? [halfOf(length)] : [halfOf(length), halfOf(width)],
    fixtureDiameter: plain(part.holding.diameter),
    fixtureHeight: plain(part.holding.height),
  };
}

const halfOf = (value: number | null): number | null => (value === null ? null : value / 2);

interface Size {
  readonly length: number | null;
  readonly width: number | null;
  readonly height: number | null;
  readonly isRound: boolean;
}

/** A round part that lies down is the block around it. */
function sizeOf({ shape, stands, size, diameter, length }: Part): Size {
  const [round, long] = [plain(diameter), plain(length)];
  if (shape === 'block') {
    const [a, b, h] = size;
    return { length: plain(a), width: plain(b), height: plain(h), isRound: false };
  }
  if (shape === 'round' && stands === 'upright') {
    return { length: round, width: round, height: long, isRound: true };
  }
  if (shape === 'round' && stands === 'lying') {
    return { length: long, width: round, height: round, isRound: false };
  }
  return { length: null, width: null, height: null, isRound: false };
}

/** Where the answer is that says how high a part stands; on a level axis how far it reaches from its fixture. */
export const heightPath = ({ shape, stands }: Part): Path =>
  shape === 'block' ? ['size', 2] : stands === 'upright' ? ['length'] : ['diameter'];

/** The rows that an arrangement is made of; the table is the rotary, or the one built in. */
export interface Rows {
  readonly machine: Machine;
  readonly rotary: Rotary | null;
  readonly table: Rotary | BuiltIn;
  /** where the row of the machine stands */
  readonly machinePath: Path;
  readonly tablePath: Path;
}

/** Null where the catalog lacks one. */
export function rowsOf(decision: Decision, { machine, rotary }: Arrangement): Rows | null {
  const mill = machineAt(decision, machine);
  if (mill === null) return null;
  const { row: machineRow, path: machinePath } = mill;
  if (rotary !== null) {
    const found = rotaryAt(decision, rotary);
    if (found === null) return null;
    const { row, path } = found;
    return { machine: machineRow, rotary: row, table: row, machinePath, tablePath: path };
  }
  const { builtIn } = machineRow;
  const tablePath = [...machinePath, 'builtIn'];
  return builtIn === null
    ? null
    : { machine: machineRow, rotary: null, table: builtIn, machinePath, tablePath };
}
