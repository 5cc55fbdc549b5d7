import {
  pairOrNoneField,
  quantitiesIn,
  statedField,
  statedOrNoneField,
} from '../documents/fields/quantity-fields.ts';
import { optionalMap } from '../documents/fields/strict-map.ts';
import type { Limits } from '../quantities/faults.ts';
import type { LengthUnits } from '../quantities/kinds.ts';

const SIZE: Limits = { above: 0, most: 1e5 };

/** The keys that a rotary and a built-in table have in common. */
export function tableMechanicsShape(units: LengthUnits) {
  const of = quantitiesIn(units);
  const torque = (means: string) => statedField(of('torque', { above: 0, most: 1e7 }, means));
  const speed = (means: string) => statedField(of('rotation', { above: 0, most: 1e5 }, means));
  const accuracy = (means: string) => statedField(of('accuracy', { above: 0, most: 36_000 }, `± ${means}`));
  const mass = (means: string) => statedField(of('mass', { above: 0, most: 1e6 }, means));
  return {
    faceplate: statedOrNoneField(
      of('length', SIZE, 'diameter of the faceplate; null: it has none'),
      'unknown',
    ),
    swing: statedField(of('length', SIZE, 'largest diameter that turns freely')),
    faceOffset: statedField(
      of(
        'length',
        { least: -1e5, most: 1e5 },
        'faceplate above the tilt axis at tilt 0, negative: sunk; single-axis, indexer: along the axis from the far end of the base',
      ),
    ),
    tilt: pairOrNoneField(
      of('angle', { least: -180, most: 180 }, 'range of the tilt; null: it does not tilt'),
      'unknown',
    ),
    tiltClearRadius: statedField(of('length', SIZE, 'radius that is free around the tilt axis')),
    payload: optionalMap(
      { level: mass('faceplate level'), tilted: mass('tilted, or axis level') },
      { means: 'largest mass on the faceplate' },
    ),
    tiltMoment: torque('largest moment about the tilt axis'),
    brakeTorque: optionalMap(
      { rotary: torque('rotary axis'), tilt: torque('tilt axis') },
      { means: 'torque that the brakes hold' },
    ),
    driveTorque: optionalMap(
      { rotary: torque('rotary axis'), tilt: torque('tilt axis') },
      { means: 'torque that the drives hold while they move' },
    ),
    inertia: statedField(of('inertia', { above: 0, most: 1e7 }, 'largest inertia of the work')),
    speed: optionalMap(
      { rotary: speed('rotary axis'), tilt: speed('tilt axis') },
      { means: 'greatest speed' },
    ),
    accuracy: optionalMap(
      { rotary: accuracy('rotary axis'), tilt: accuracy('tilt axis') },
      { means: 'indexing accuracy' },
    ),
  };
}
