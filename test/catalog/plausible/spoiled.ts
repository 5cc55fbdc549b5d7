import type { Machine, Rotary, TableMechanics } from '../../../src/catalog/catalog.ts';

/** A row of the demo, what is done to it, and the value that a rule then doubts. */
export interface Spoiled<Row> {
  readonly rule: string;
  readonly of: string;
  readonly spoil: (row: Row) => Row;
  readonly path: string;
  readonly perhaps?: string;
}

const table = (
  rule: string,
  path: string,
  change: Partial<TableMechanics>,
  perhaps?: string,
): Spoiled<TableMechanics> => ({
  rule,
  of: 'plover',
  spoil: (row) => ({ ...row, ...change }),
  path,
  ...(perhaps === undefined ? {} : { perhaps }),
});

/** Plover: faceplate 125, swing 200, radius 185, payload 36 and 22 kg, moment 24, brakes 210 and 380, drives 62 and 115. */
export const SPOILED_TABLES: readonly Spoiled<TableMechanics>[] = [
  table('faceplate-in-swing', 'swing', { swing: 120 }),
  table('swing-tilts', 'tiltClearRadius', { tiltClearRadius: 105 }),
  table('clear-radius-near-swing', 'tiltClearRadius', { tiltClearRadius: 420 }),
  table('tilt-through-level', 'tilt', { tilt: [20, 110] }),
  table('tilt-in-degrees', 'tilt', { tilt: [-0.52, 1.92] }, '[-0.52 rad, 1.92 rad]'),
  table('payload-level-most', 'payload.tilted', { payload: { level: 22, tilted: 36 } }),
  table('tilt-moment-lever', 'tiltMoment', { tiltMoment: 240 }),
  table('tilt-brake-holds-moment', 'brakeTorque.tilt', { brakeTorque: { rotary: 210, tilt: 20 } }),
  table('tilt-drive-lifts-moment', 'driveTorque.tilt', { driveTorque: { rotary: 62, tilt: 20 } }),
  table('brakes-of-one-size', 'brakeTorque.tilt', { brakeTorque: { rotary: 210, tilt: 3800 } }),
  table('brake-over-drive', 'brakeTorque.rotary', { driveTorque: { rotary: 300, tilt: 115 } }),
  table('inertia-of-payload', 'inertia', { inertia: 1100 }, '1100 kg·cm²'),
  table('accuracy-in-arcsec', 'accuracy.tilt', { accuracy: { rotary: 15, tilt: 0.005 } }, '0.005°'),
];

const rotary = (
  rule: string,
  path: string,
  change: (row: Rotary) => Partial<Rotary>,
  perhaps?: string,
  of = 'plover',
): Spoiled<Rotary> => ({
  rule,
  of,
  spoil: (row) => ({ ...row, ...change(row) }),
  path,
  ...(perhaps === undefined ? {} : { perhaps }),
});

const holdOf = (keyWidth: number, pitches: readonly number[]): Partial<Rotary> => ({
  hold: { 'tilt-along-x': { keyWidth, pitches } },
});

export const SPOILED_ROTARIES: readonly Spoiled<Rotary>[] = [
  rotary('rotary-lengths', 'height', () => ({ height: 10 }), '10 in'),
  rotary('swing-above-table', 'swing', () => ({ swing: 310 })),
  rotary('faceplate-on-base', 'faceplate', () => ({ faceplate: 440, swing: 440 })),
  rotary(
    'trunnion-longer-than-swing',
    'base.along',
    (row) => ({ base: { ...row.base, along: 150 } }),
    undefined,
    'nuthatch',
  ),
  rotary('housing-below-height', 'housing[0].top', () => ({ height: 200 })),
  rotary('center-below-height', 'height', () => ({ height: 140 })),
  rotary('nose-in-faceplate', 'nose', () => ({ nose: 'A2-5' })),
  rotary('bar-in-swing', 'collet', () => ({ collet: 120 })),
  rotary('rotary-mass-for-size', 'mass', () => ({ mass: 216 }), '216 lb'),
  rotary('key-of-a-slot', 'hold.tilt-along-x.keyWidth', () => holdOf(17, [189])),
  rotary('bolts-on-base', 'hold.tilt-along-x.pitches[1]', () => holdOf(14, [189, 315])),
  rotary('tailstock-price', 'tailstock.price', () => ({ tailstock: { length: 200, price: 30_000 } })),
  rotary('air-in-bar', 'air.bar', () => ({ air: { bar: 80 } }), '80 psi'),
  rotary('price-is-one', 'price', () => ({ price: 0 })),
  rotary('price-for-mass', 'price', () => ({ price: 298 })),
];

const machine = (
  rule: string,
  of: string,
  path: string,
  change: (row: Machine) => Partial<Machine>,
  perhaps?: string,
): Spoiled<Machine> => ({
  rule,
  of,
  spoil: (row) => ({ ...row, ...change(row) }),
  path,
  ...(perhaps === undefined ? {} : { perhaps }),
});

type Table = NonNullable<Machine['table']>;
const tableWith =
  (change: (table: Table) => Partial<Table>) =>
  ({ table: before }: Machine): Partial<Machine> => ({
    table: before === null ? null : { ...before, ...change(before) },
  });
const slotsWith = (change: Partial<Table['slots']>) =>
  tableWith(({ slots }) => ({ slots: { ...slots, ...change } }));
const drive =
  (change: Partial<Machine['spindleDrive']>) =>
  ({ spindleDrive }: Machine): Partial<Machine> => ({ spindleDrive: { ...spindleDrive, ...change } });

export const SPOILED_MACHINES: readonly Spoiled<Machine>[] = [
  machine('machine-lengths', 'alder', 'throat', () => ({ throat: 22 }), '22 in'),
  machine('nose-goes-as-far-as-z', 'alder', 'noseToTable', () => ({ noseToTable: [100, 700] })),
  machine('spindle-goes-as-far-as-y', 'yew', 'spindleToTable', () => ({ spindleToTable: [80, 740] })),
  machine('reach-goes-as-far-as-travel', 'damson', 'builtIn.reach.x', ({ travel }) => ({
    travel: [800, travel[1], travel[2]],
  })),
  machine('nose-above-table', 'alder', 'noseToTable[0]', () => ({ noseToTable: [-20, 488] })),
  machine('addition-within-travel', 'alder', 'clearance[0].adds', () => ({
    clearance: [{ kind: 'column-spacer', adds: 600, price: 1, height: 600 }],
  })),
  machine(
    'table-near-x-travel',
    'alder',
    'table.size[0]',
    tableWith(() => ({ size: [3500, 508] })),
  ),
  machine(
    'table-near-y-travel',
    'alder',
    'table.size[1]',
    tableWith(() => ({ size: [914, 2000] })),
  ),
  machine('throat-near-y-travel', 'alder', 'throat', () => ({ throat: 300 })),
  machine(
    'table-at-hand',
    'rowan',
    'table.height',
    tableWith(() => ({ height: 84 })),
  ),
  machine(
    'table-load-for-size',
    'sallow',
    'table.load',
    tableWith(() => ({ load: 15 })),
  ),
  machine('slot-width', 'osier', 'table.slots.width', slotsWith({ width: 17 })),
  machine('slot-pitch-for-width', 'osier', 'table.slots.pitch', slotsWith({ pitch: 30 })),
  machine('slots-in-table', 'larch', 'table.slots', slotsWith({ count: 12 })),
  machine('power-from-torque', 'alder', 'spindleDrive.torque', drive({ torque: 6 })),
  machine('power-in-kilowatts', 'alder', 'spindleDrive.power', drive({ power: 15_000 }), '15000 W'),
  machine('load-over-spindle-power', 'alder', 'power.kVA', ({ power }) => ({ power: { ...power, kVA: 8 } })),
  machine('nose-for-taper', 'alder', 'noseDiameter', () => ({ noseDiameter: 40 })),
  machine('positioning-of-a-mill', 'alder', 'positioning', () => ({ positioning: 0.0003 }), '0.0003 in'),
  machine('acceleration-of-a-mill', 'alder', 'acceleration', () => ({ acceleration: 0.1 }), '0.1 g'),
  machine('look-ahead-reads-more', 'alder', 'blocks.lookAhead', ({ blocks }) => ({
    blocks: { ...blocks, lookAhead: 100 },
  })),
  machine('drives-of-what-comes-with-it', 'larch', 'axisDrives.fitted', ({ axisDrives }) => ({
    axisDrives: { ...axisDrives, fitted: 0 },
  })),
  machine('table-in-footprint', 'alder', 'footprint[0]', ({ footprint: [, depth, height] }) => ({
    footprint: [800, depth, height],
  })),
  machine('nose-below-top', 'alder', 'footprint[2]', ({ footprint: [width, depth] }) => ({
    footprint: [width, depth, 1400],
  })),
  machine('ships-as-it-stands', 'alder', 'shipping', ({ shipping: [, width, height] }) => ({
    shipping: [4000, width, height],
  })),
  machine('machine-mass-for-size', 'alder', 'mass', () => ({ mass: 4.2 }), '4.2 t'),
  machine('supply-voltage', 'alder', 'power.volts', ({ power }) => ({ power: { ...power, volts: 24 } })),
  machine('features-below-price', 'alder', 'features', ({ features }) => ({
    features: { ...features, toolSetter: 100_000 },
  })),
  machine('air-in-bar', 'alder', 'air.bar', ({ air }) => ({ air: { ...air, bar: 0.6 } }), '0.6 MPa'),
  machine('price-is-one', 'alder', 'price', () => ({ price: 0 })),
  machine('price-for-mass', 'alder', 'price', () => ({ price: 765 })),
];
