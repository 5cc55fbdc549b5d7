import type { Catalog, Machine, Provenance, Rotary } from '../../src/catalog/catalog.ts';

/** Rows of a catalog made up for the tests of the report. */

const from: Provenance = {
  file: 'rows.yaml',
  line: 1,
  maker: 'Larkfield',
  document: 'invented',
  date: '2026-01-01',
};

const rotary = (id: string, name: string, given: Partial<Rotary>): Rotary => ({
  id,
  name,
  class: 'single-support',
  faceplate: 125,
  nose: 'none',
  collet: null,
  swing: 180,
  centerHeight: 150,
  faceOffset: 40,
  tilt: [-20, 110],
  tiltClearRadius: 160,
  payload: { level: 35, tilted: 20 },
  tiltMoment: 22,
  brakeTorque: { rotary: 180, tilt: 450 },
  driveTorque: { rotary: 60, tilt: 110 },
  inertia: 0.12,
  speed: { rotary: 80, tilt: 50 },
  accuracy: { rotary: 15, tilt: 15 },
  base: { along: 420, across: 260, centerAlong: 140, centerAcross: 130 },
  housing: null,
  mass: 95,
  hold: { 'tilt-along-y': { keyWidth: 16, pitches: [80, 160] } },
  height: 300,
  tailstock: null,
  liftingPoints: 2,
  air: { bar: 5 },
  price: 28500,
  from,
  ...given,
});

const machine = (id: string, name: string, given: Partial<Machine>): Machine => ({
  id,
  name,
  kind: 'mill',
  spindle: 'vertical',
  travel: [760, 510, 510],
  table: {
    size: [915, 460],
    height: 850,
    load: 680,
    slots: { count: 5, width: 16, pitch: 80, center: true, along: 'x' },
  },
  noseToTable: [100, 610],
  spindleToTable: null,
  builtIn: null,
  rotaryIncluded: null,
  throat: 560,
  noseDiameter: 90,
  spindleDrive: { power: 15, torque: 80, speed: 10000, taper: 'CAT40' },
  positioning: 0.008,
  axisDrives: { fitted: 0, offered: 2, priceEach: 4200 },
  features: { tiltedWorkPlane: 'standard', spindleProbe: 6800 },
  blocks: { standard: 300, lookAhead: 1200, ahead: 40, aheadWithLookAhead: 400 },
  acceleration: 4,
  clearance: [{ kind: 'lowered-table', adds: 75, price: 3200, height: 0 }],
  footprint: [2400, 2100, 2700],
  service: { left: 600, right: 600, front: 1000, rear: 900 },
  shipping: [2300, 2000, 2500],
  mass: 3600,
  power: { kVA: 28, volts: 400, phases: 3 },
  air: { flow: 110, bar: 6 },
  price: 72000,
  from,
  ...given,
});

/** `name` changes what a row is called, so that hostile names can be tried. */
export const fixtureCatalog = (name: (plain: string) => string): Catalog => ({
  format: 'fivesides-catalog/1',
  units: 'mm',
  currency: 'EUR',
  rotaries: [
    rotary('wren', name('Wren'), {}),
    rotary('bittern', name('Bittern'), { class: 'trunnion', swing: 320, price: 46000, mass: 260 }),
  ],
  machines: [
    machine('rowan', name('Rowan'), { from: { ...from, document: name('invented') } }),
    machine('alder', name('Alder'), { price: 118000, travel: [1020, 610, 635] }),
  ],
});
