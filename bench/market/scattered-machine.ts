import type { BuiltIn, Machine, Slots, Stated, StatedPair } from '../../src/catalog/catalog.ts';
import { pairWith, type Scatter } from './scatter.ts';
import { scatteredMechanics } from './scattered-rotary.ts';

type Three = readonly [Stated, Stated, Stated];

/** A machine like this one, larger or smaller; slots, drives, features and supply are now and then others. */
export function scatteredMachine(row: Machine, scatter: Scatter, id: string, name: string): Machine {
  const { chance } = scatter;
  const length = scatter.by(1);
  const three = ([x, y, z]: Three): Three => [length(x), length(y), length(z)];
  const { table, spindleDrive, service, blocks } = row;
  return {
    ...row,
    id,
    name,
    travel: three(row.travel),
    table: table && {
      size: [length(table.size[0]), length(table.size[1])],
      height: scatter.by(0)(table.height),
      load: scatter.by(2)(table.load),
      slots: otherSlots(table.slots, scatter),
    },
    noseToTable: pair(row.noseToTable, scatter),
    spindleToTable: row.spindleToTable && pair(row.spindleToTable, scatter),
    builtIn: row.builtIn && scatteredTable(row.builtIn, scatter),
    throat: length(row.throat),
    noseDiameter: scatter.by(0.5)(row.noseDiameter),
    spindleDrive: {
      power: scatter.by(1)(spindleDrive.power),
      torque: scatter.by(2)(spindleDrive.torque),
      speed: scatter.by(-0.5)(spindleDrive.speed),
      taper: spindleDrive.taper,
    },
    positioning: chance.pick([0.004, 0.005, 0.006, 0.008, 0.01]),
    axisDrives:
      row.kind === 'mill' ? { ...row.axisDrives, offered: chance.pick([0, 1, 1, 2, 2, 2]) } : row.axisDrives,
    features: fewerFeatures(row.features, scatter),
    blocks: { ...blocks, standard: scatter.by(0)(blocks.standard) },
    acceleration: scatter.by(-1)(row.acceleration),
    clearance: row.clearance.map((each) => ({ ...each, price: length(each.price) })),
    footprint: three(row.footprint),
    service: {
      left: length(service.left),
      right: length(service.right),
      front: length(service.front),
      rear: length(service.rear),
    },
    shipping: three(row.shipping),
    mass: scatter.by(2.5)(row.mass),
    power: {
      kVA: scatter.by(1.5)(row.power.kVA),
      volts: chance.happens(0.85) ? row.power.volts : chance.pick([230, 480]),
      phases: chance.happens(0.92) ? row.power.phases : 1,
    },
    air: { flow: scatter.by(1)(row.air.flow), bar: chance.pick([5, 6, 6, 6, 8]) },
    price: scatter.by(1.5)(row.price),
  };
}

function otherSlots(slots: Slots, { chance }: Scatter): Slots {
  if (chance.happens(0.7)) return slots;
  return {
    ...slots,
    count: chance.between(3, 9),
    width: chance.pick([14, 18, 22]),
    pitch: chance.pick([63, 80, 100, 125]),
    along: chance.pick(['x', 'x', 'y']),
  };
}

/** Each feature is now and then not offered at all. */
const fewerFeatures = (features: Machine['features'], { chance }: Scatter): Machine['features'] =>
  Object.fromEntries(Object.entries(features).filter(() => chance.happens(0.9)));

const pair = (of: StatedPair, scatter: Scatter): StatedPair =>
  of === 'unknown' ? of : pairWith(scatter, of);

function scatteredTable(row: BuiltIn, scatter: Scatter): BuiltIn {
  const { x, y, noseToFace } = row.reach;
  return {
    ...row,
    ...scatteredMechanics(row, scatter),
    reach: { x: pair(x, scatter), y: pair(y, scatter), noseToFace: pair(noseToFace, scatter) },
  };
}
