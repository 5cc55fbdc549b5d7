import type { Rotary, TableMechanics } from '../../src/catalog/catalog.ts';
import { pairWith, type Scatter } from './scatter.ts';

/** A rotary like this one, larger or smaller: what has to fit together is scaled together, strength goes its own way. */
export function scatteredRotary(row: Rotary, scatter: Scatter, id: string, name: string): Rotary {
  const { base, housing, tailstock } = row;
  return {
    ...row,
    ...scatteredMechanics(row, scatter),
    id,
    name,
    collet: scatter.with(row.collet),
    centerHeight: scatter.with(row.centerHeight),
    base: {
      along: scatter.with(base.along),
      across: scatter.with(base.across),
      centerAlong: scatter.with(base.centerAlong),
      centerAcross: scatter.with(base.centerAcross),
    },
    housing:
      housing?.map(({ along, across, top }) => ({
        along: pairWith(scatter, along),
        across: pairWith(scatter, across),
        top: scatter.with(top),
      })) ?? null,
    mass: scatter.by(2.5)(row.mass),
    height: scatter.with(row.height),
    tailstock: tailstock && {
      length: scatter.by(1)(tailstock.length),
      price: scatter.by(1)(tailstock.price),
    },
    air: { bar: scatter.chance.pick([5, 5, 6, 6, 8]) },
    price: scatter.by(1.3)(row.price),
  };
}

/** What a rotary and a built-in table have in common. */
export function scatteredMechanics(row: TableMechanics, scatter: Scatter): TableMechanics {
  const strength = scatter.by(2);
  const turn = scatter.by(-1);
  const either = <Value>(
    of: { readonly rotary: Value; readonly tilt: Value },
    by: (value: Value) => Value,
  ) => ({
    rotary: by(of.rotary),
    tilt: by(of.tilt),
  });
  return {
    faceplate: scatter.with(row.faceplate),
    swing: scatter.by(1)(row.swing),
    faceOffset: scatter.with(row.faceOffset),
    tilt:
      row.tilt === null || row.tilt === 'unknown'
        ? row.tilt
        : [row.tilt[0], row.tilt[1] + scatter.chance.pick([-20, -5, 0, 0, 5])],
    tiltClearRadius: scatter.by(1)(row.tiltClearRadius),
    payload: { level: scatter.by(2.5)(row.payload.level), tilted: scatter.by(2.5)(row.payload.tilted) },
    tiltMoment: scatter.by(3)(row.tiltMoment),
    brakeTorque: either(row.brakeTorque, strength),
    driveTorque: either(row.driveTorque, strength),
    inertia: scatter.by(4)(row.inertia),
    speed: either(row.speed, turn),
    accuracy: either(row.accuracy, scatter.by(0)),
  };
}
