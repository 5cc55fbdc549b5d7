import { isMap } from '../documents/fields/strict-map.ts';
import type { FaultAt } from '../documents/problems-from-issues.ts';
import { isTilting } from './tilting.ts';

/**
 * What no single value of a catalog file shows: keys that do not belong to the kind of row they stand in. Looks at
 * the file as it stands, so that it finds everything whatever else is wrong.
 */
export function crossChecked(raw: unknown): readonly FaultAt[] {
  if (!isMap(raw)) return [];
  return [
    ...rowFaults(raw.rotaries, 'rotaries', rotaryFaults),
    ...rowFaults(raw.machines, 'machines', machineFaults),
  ];
}

type Row = Readonly<Record<string, unknown>>;
type RowFault = Omit<FaultAt, 'path'> & { readonly path: readonly string[] };

function rowFaults(
  rows: unknown,
  list: string,
  faults: (row: Row) => readonly RowFault[],
): readonly FaultAt[] {
  if (!Array.isArray(rows)) return [];
  return rows.flatMap((row: unknown, index) =>
    isMap(row) ? faults(row).map((fault) => ({ ...fault, path: [list, index, ...fault.path] })) : [],
  );
}

const isGiven = (row: Row, key: string): boolean =>
  Object.hasOwn(row, key) && row[key] !== null && row[key] !== 'unknown' && row[key] !== 'none';

const notHere = (path: readonly string[], found: string, expected: string): RowFault => {
  return { path, atKey: true, found, expected };
};

function rotaryFaults(row: Row): readonly RowFault[] {
  if (typeof row.class !== 'string') return [];
  const faults: RowFault[] = [];
  const tilts = isTilting(row.class);
  const known = tilts || row.class === 'single-axis' || row.class === 'collet-indexer';
  if (!known) return [];
  for (const key of tilts ? [] : ['tilt', 'tiltClearRadius', 'tiltMoment']) {
    if (isGiven(row, key))
      faults.push(notHere([key], `is given for a ${row.class}`, 'expected a class that tilts'));
  }
  for (const key of tilts ? [] : ['brakeTorque', 'driveTorque', 'speed', 'accuracy']) {
    const of = row[key];
    if (isMap(of) && isGiven(of, 'tilt'))
      faults.push(notHere([key, 'tilt'], `is given for a ${row.class}`, 'expected a class that tilts'));
  }
  const wrong = tilts ? 'axis-' : 'tilt-';
  for (const mounting of isMap(row.hold) ? Object.keys(row.hold) : []) {
    if (!mounting.startsWith(`${wrong}along-`)) continue;
    const right = mounting.replace(wrong, tilts ? 'tilt-' : 'axis-');
    faults.push({
      ...notHere(['hold', mounting], `is no mounting of a ${row.class}`, `expected ${right}`),
      didYouMean: right,
    });
  }
  return faults;
}

function machineFaults(row: Row): readonly RowFault[] {
  const { kind } = row;
  const faults: RowFault[] = [];
  const refuse = (key: string, expected: string) => {
    if (isGiven(row, key)) faults.push(notHere([key], `is given for a machine of kind ${kind}`, expected));
  };
  if (kind === 'five-axis') {
    refuse('table', 'expected builtIn instead');
    refuse('noseToTable', 'expected builtIn.reach.noseToFace instead');
    refuse('rotaryIncluded', 'expected builtIn instead');
    faults.push(...leanFaults(row.builtIn, row.spindle === 'horizontal'));
  }
  if (kind === 'five-axis') refuse('spindleToTable', 'expected builtIn.reach.y instead');
  else if (row.spindle !== 'horizontal' && isGiven(row, 'spindleToTable'))
    faults.push(
      notHere(['spindleToTable'], 'is given without a horizontal spindle', 'expected spindle: horizontal'),
    );
  if (kind === 'mill' || kind === 'convertible') refuse('builtIn', 'expected table, or kind: five-axis');
  if (kind === 'mill') refuse('rotaryIncluded', 'expected kind: convertible, or no rotary');
  return faults;
}

/** The top of the work leans across the tilt axis, never along it. */
function leanFaults(builtIn: unknown, horizontal: boolean): readonly RowFault[] {
  if (!isMap(builtIn)) return [];
  const { tiltAxis, leans } = builtIn;
  const sideways = leans === 'toward-left' || leans === 'toward-right';
  const lengthways = leans === 'toward-door' || leans === 'toward-column';
  const upright = leans === 'downward' || leans === 'upward';
  const found = `is ${String(leans)} about a tilt axis ${String(tiltAxis)}`;
  /** under this spindle, whichever axis it is */
  const impossible = horizontal ? lengthways : upright;
  if (tiltAxis !== 'along-x' && tiltAxis !== 'along-y' && impossible) {
    const expected = `expected ${horizontal ? 'downward, upward' : 'toward-door, toward-column'}, toward-left or toward-right`;
    return [
      {
        path: ['builtIn', 'leans'],
        found: `is ${String(leans)} under a spindle that is ${horizontal ? '' : 'not '}horizontal`,
        expected,
      },
    ];
  }
  if (tiltAxis === 'along-x' && (sideways || impossible)) {
    const expected = horizontal ? 'expected downward or upward' : 'expected toward-door or toward-column';
    return [{ path: ['builtIn', 'leans'], found, expected }];
  }
  if (tiltAxis === 'along-y' && (lengthways || upright)) {
    return [{ path: ['builtIn', 'leans'], found, expected: 'expected toward-left or toward-right' }];
  }
  return [];
}
