import type { BuiltIn, Machine, Rotary, Stated, TableMechanics } from '../../catalog/catalog.ts';
import { anything, anythingFromZero, type Interval } from '../../quantities/interval.ts';
import type { Gravity, RotaryCase } from '../judging/case.ts';
import { known, stated, type Value } from '../judging/value.ts';

type Reader = (value: Stated | null, name: string, essential?: boolean, possible?: Interval) => Value;

/** A missing value is anything; null is none, which the checks ask about before they read it. */
const reader =
  (root: string): Reader =>
  (value, name, essential = false, possible = anythingFromZero) =>
    stated(value ?? 0, `${root}.${name}`, possible, essential);

/** What a rotary of the catalog offers. */
export function rotaryCase(row: Rotary): RotaryCase {
  const read = reader(`rotaries[${row.id}]`);
  const twoAxis = row.class === 'single-support' || row.class === 'trunnion';
  return {
    key: row.id,
    class: row.class,
    axes: twoAxis ? 2 : 1,
    row,
    gravity: 'tool',
    ...mechanics(row, read),
    hasCollet: row.collet !== null,
    collet: read(row.collet, 'collet'),
    centerHeight: read(row.centerHeight, 'centerHeight', true),
    baseAlong: read(row.base.along, 'base.along'),
    baseAcross: read(row.base.across, 'base.across'),
    baseCenterAlong: read(row.base.centerAlong, 'base.centerAlong'),
    baseCenterAcross: read(row.base.centerAcross, 'base.centerAcross'),
    tailstockLength: read(row.tailstock === null ? 0 : row.tailstock.length, 'tailstock.length'),
    height: read(row.height, 'height'),
    mass: read(row.mass, 'mass'),
    airBar: read(row.air.bar, 'air.bar'),
  };
}

/** A single axis on its back on the table of a horizontal mill, so that its axis stands upright. */
export const onItsBack = (rotary: RotaryCase): RotaryCase => ({ ...rotary, gravity: 'along' });

/**
 * Gravity on a built-in table: on a horizontal spindle X is level and Y upright, and so is a tilt axis along them.
 * Example: gravityOn('horizontal', 'along-y') → 'along'.
 */
export function gravityOn(spindle: Machine['spindle'], tiltAxis: BuiltIn['tiltAxis']): Gravity {
  if (spindle !== 'horizontal') return 'tool';
  return tiltAxis === 'along-y' ? 'along' : 'across';
}

/** What the table built into a machine offers. */
export function builtInCase({ id: machine, spindle }: Machine, row: BuiltIn): RotaryCase {
  const root = `machines[${machine}].builtIn`;
  const none = known(0, `${root}.none`);
  return {
    key: `${machine}/built-in`,
    class: 'built-in',
    axes: 2,
    row: null,
    gravity: gravityOn(spindle, row.tiltAxis),
    ...mechanics(row, reader(root)),
    hasCollet: false,
    collet: none,
    centerHeight: none,
    baseAlong: none,
    baseAcross: none,
    baseCenterAlong: none,
    baseCenterAcross: none,
    tailstockLength: none,
    height: none,
    mass: none,
    airBar: none,
  };
}

function mechanics(row: TableMechanics, read: Reader) {
  return {
    hasFaceplate: row.faceplate !== null,
    faceplate: read(row.faceplate, 'faceplate'),
    swing: read(row.swing, 'swing', true),
    faceOffset: read(row.faceOffset, 'faceOffset', true, anything),
    tiltGreatest: read(greatestTilt(row.tilt), 'tilt', true, {
      low: 0,
      high: 180,
    }),
    tiltClearRadius: read(row.tiltClearRadius, 'tiltClearRadius'),
    payloadLevel: read(row.payload.level, 'payload.level', true),
    payloadTilted: read(row.payload.tilted, 'payload.tilted', true),
    tiltMoment: read(row.tiltMoment, 'tiltMoment'),
    brakeRotary: read(row.brakeTorque.rotary, 'brakeTorque.rotary'),
    brakeTilt: read(row.brakeTorque.tilt, 'brakeTorque.tilt'),
    driveRotary: read(row.driveTorque.rotary, 'driveTorque.rotary'),
    driveTilt: read(row.driveTorque.tilt, 'driveTorque.tilt'),
    inertia: read(row.inertia, 'inertia'),
    speedRotary: read(row.speed.rotary, 'speed.rotary'),
    accuracyRotary: read(row.accuracy.rotary, 'accuracy.rotary'),
    accuracyTilt: read(row.accuracy.tilt, 'accuracy.tilt'),
  };
}

/** Greatest tilt to either side. */
function greatestTilt(tilt: TableMechanics['tilt']): Stated | null {
  if (tilt === null || tilt === 'unknown') return tilt;
  return Math.max(Math.abs(tilt[0]), Math.abs(tilt[1]));
}
