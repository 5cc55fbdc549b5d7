import type { Catalog, List, Provenance } from './catalog.ts';
import { valuesByPath } from './row-values.ts';

/** A value that a row lacks, and the checks that stay open for the lack of it. */
interface MissingValue {
  /** within the row, e.g. `payload.tilted` */
  readonly path: string;
  /** ids of checks; none: only measures, or checks that need it for other work than yours */
  readonly checks: readonly string[];
}

export interface RowWithGaps {
  readonly list: List;
  /** e.g. `rotaries[wren]` */
  readonly row: string;
  readonly from: Provenance;
  readonly missing: readonly MissingValue[];
}

const REACH = ['reach-high', 'reach-low', 'index-clear'];
const TRAVEL = ['travel-x', 'travel-y'];
const BASE = ['table-footprint', ...TRAVEL, 'column'];
/** The hook counts where it is not sure that a forklift lifts the rotary. */
const LIFT = ['lift', 'hook-height'];
const SIZE = ['table-footprint', ...TRAVEL, 'tailstock'];

/** Which checks read a value of a rotary or of a built-in table. */
const OF_TABLE: Readonly<Record<string, readonly string[]>> = {
  faceplate: ['faceplate', 'index-clear', 'table-clear', 'column', 'tool-length'],
  swing: ['swing', 'faceplate'],
  faceOffset: [
    'tilt-swing',
    'tilt-moment',
    'brake-tilt',
    'drive-tilt',
    'index-accuracy',
    ...TRAVEL,
    ...REACH,
    'table-clear',
    'housing-clear',
    'column',
    'tailstock',
  ],
  tilt: ['tilt-range'],
  tiltClearRadius: ['tilt-swing'],
  'payload.level': ['payload'],
  'payload.tilted': ['payload'],
  tiltMoment: ['tilt-moment'],
  'brakeTorque.rotary': ['brake-rotary'],
  'brakeTorque.tilt': ['brake-tilt'],
  'driveTorque.rotary': ['drive-rotary'],
  'driveTorque.tilt': ['drive-tilt'],
  inertia: ['inertia'],
  'speed.rotary': ['rotary-speed'],
  'speed.tilt': [],
  'accuracy.rotary': ['index-accuracy'],
  'accuracy.tilt': ['index-accuracy'],
};

const OF_ROTARY: Readonly<Record<string, readonly string[]>> = {
  ...OF_TABLE,
  nose: [],
  collet: ['collet'],
  centerHeight: ['swing', ...REACH, 'table-clear', 'housing-clear'],
  'base.along': [...BASE, 'tailstock', ...LIFT],
  'base.across': [...BASE, ...LIFT],
  'base.centerAlong': BASE,
  'base.centerAcross': BASE,
  housing: ['housing-clear'],
  mass: ['table-load', 'floor-load', ...LIFT],
  hold: ['slot-match', 'table-footprint'],
  'hold.*.keyWidth': ['slot-match'],
  'hold.*.pitches': ['slot-match', 'table-footprint'],
  height: ['table-footprint', 'hook-height'],
  'tailstock.length': ['tailstock', 'table-footprint'],
  'tailstock.price': ['budget'],
  liftingPoints: [],
  'air.bar': ['air'],
  price: ['budget'],
};

const OF_MACHINE: Readonly<Record<string, readonly string[]>> = {
  // judged as vertical while nobody says so
  spindle: [],
  'travel[0]': ['travel-x', 'index-clear'],
  'travel[1]': ['travel-y', 'index-clear'],
  'travel[2]': [],
  'table.size[0]': SIZE,
  'table.size[1]': SIZE,
  'table.height': ['hook-height'],
  'table.load': ['table-load'],
  'table.slots.count': ['slot-match', 'table-footprint'],
  'table.slots.width': ['slot-match'],
  'table.slots.pitch': ['slot-match', 'table-footprint'],
  'table.slots.center': ['slot-match'],
  'table.slots.along': ['slot-match', 'table-footprint'],
  noseToTable: REACH,
  spindleToTable: ['travel-y', 'index-clear'],
  throat: ['column'],
  noseDiameter: ['index-clear', 'housing-clear', 'tool-length'],
  'spindleDrive.power': ['spindle-power', 'spindle-torque'],
  'spindleDrive.torque': ['spindle-torque'],
  'spindleDrive.speed': ['spindle-speed'],
  'spindleDrive.taper': [],
  positioning: ['index-accuracy'],
  'axisDrives.fitted': ['axis-drives', 'budget'],
  'axisDrives.offered': ['axis-drives'],
  'axisDrives.priceEach': ['budget'],
  'features.*': ['budget'],
  'blocks.*': ['look-ahead'],
  acceleration: ['look-ahead'],
  'clearance[*].price': ['budget'],
  'footprint[0]': ['bay', 'floor-load'],
  'footprint[1]': ['bay', 'floor-load'],
  'footprint[2]': ['ceiling'],
  'service.*': ['bay'],
  'shipping[*]': ['doorway'],
  mass: ['floor-load'],
  'power.*': ['power', 'budget'],
  'air.*': ['air'],
  price: ['budget'],
  ...Object.fromEntries(Object.entries(OF_TABLE).map(([path, checks]) => [`builtIn.${path}`, checks])),
  'builtIn.tiltAxis': [...TRAVEL, 'column', 'index-clear'],
  'builtIn.leans': [...TRAVEL, 'column'],
  'builtIn.reach.x': ['travel-x', 'index-clear'],
  'builtIn.reach.y': ['travel-y', 'index-clear'],
  'builtIn.reach.noseToFace': REACH,
};

/** Every row with what it lacks, in the order of the catalog. Rows that lack nothing are left out. */
export function missingValues(catalog: Catalog): readonly RowWithGaps[] {
  const rotaries = catalog.rotaries.map((row) => {
    // without an outline the housing is unknown; a table that does not tilt lacks nothing of a tilt
    const { from, ...values } = row;
    const housing = row.housing === null ? 'unknown' : row.housing;
    const gaps = gapsOf({ ...values, housing }, OF_ROTARY);
    const missing =
      row.tilt === null ? gaps.filter(({ path }) => !/tilt(?!ed)/i.test(path)) : gaps.map(ofTilting);
    return { list: 'rotaries' as const, row: `rotaries[${row.id}]`, from, missing };
  });
  const machines = catalog.machines.map(({ from, ...values }) => {
    const missing = gapsOf(values, OF_MACHINE)
      .filter(({ path }) => path !== 'noseToTable' || values.table !== null)
      .filter(({ path }) => path !== 'throat' || values.spindle !== 'horizontal')
      .map((each) => (values.spindle === 'horizontal' ? { ...each, checks: onHorizontal(each) } : each));
    return { list: 'machines' as const, row: `machines[${values.id}]`, from, missing };
  });
  return [...rotaries, ...machines].filter(({ missing }) => missing.length > 0);
}

/**
 * On a horizontal spindle no column stands along Y, a mill's heights say how far it comes, and gravity pulls on the tilt
 * axis as that lies.
 */
function onHorizontal({ path, checks }: MissingValue): readonly string[] {
  if (path === 'travel[1]') return [];
  const tilt = path === 'builtIn.tiltAxis' || path === 'builtIn.leans' ? ABOUT_TILT : [];
  return [...tilt, ...checks.filter((check) => check !== 'column')];
}
const ABOUT_TILT = ['tilt-moment', 'brake-tilt', 'drive-tilt'];

/** Only a table that does not tilt works with a tailstock, or lies on its back, as deep as it is high otherwise. */
const ofTilting = ({ path, checks }: MissingValue): MissingValue => {
  const left = path === 'height' ? 'table-footprint' : 'tailstock';
  return { path, checks: checks.filter((check) => check !== left) };
};

function gapsOf(row: object, checks: Readonly<Record<string, readonly string[]>>): readonly MissingValue[] {
  return [...valuesByPath(row)].flatMap(([path, value]) =>
    value === 'unknown' ? [{ path, checks: checksOf(path, checks) }] : [],
  );
}

/** A `*` in the table stands for any one step. */
function checksOf(path: string, checks: Readonly<Record<string, readonly string[]>>): readonly string[] {
  const steps = path.split(/[.[]/);
  const pattern = Object.keys(checks).find((each) => {
    const parts = each.split(/[.[]/);
    return (
      parts.length === steps.length &&
      parts.every((part, index) => part.startsWith('*') || part === steps[index])
    );
  });
  return pattern === undefined ? [] : (checks[pattern] ?? []);
}
