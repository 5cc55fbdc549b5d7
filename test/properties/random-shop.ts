import fc from 'fast-check';
import type { Machine, Mounting, Rotary } from '../../src/catalog/catalog.ts';
import { MATERIAL_IDS } from '../../src/mechanics/forces/materials.ts';
import { type Approach, HOLDINGS, MOTIONS, type Part } from '../../src/questions/answers.ts';
import { EXAMPLE_MACHINE, EXAMPLE_PART, EXAMPLE_ROTARY } from '../rules/example-shop.ts';

/** Random parts, rotaries and machines: sunk faceplates, undercuts, both shapes, every class, all of it known. */

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

const approach: fc.Arbitrary<Approach> = fc.oneof(
  fc.constant<Approach>('sides'),
  fc.constant<Approach>('around'),
  real(2, 88).map((slant): Approach => ({ slant })),
  real(92, 120).map((undercut): Approach => ({ undercut })),
);

const approaches = fc
  .tuple(fc.boolean(), fc.uniqueArray(approach, { minLength: 1, maxLength: 3, selector: kindOf }))
  .map(([top, others]): readonly Approach[] => (top ? ['top', ...others] : others));

function kindOf(of: Approach): string {
  return typeof of === 'string' ? of : (Object.keys(of)[0] as string);
}

const cut = fc.oneof(
  fc.constantFrom('light' as const, 'medium' as const, 'heavy' as const),
  fc.record({
    diameter: real(6, 63),
    teeth: fc.integer({ min: 1, max: 8 }),
    ap: real(0.5, 20),
    ae: real(0.5, 6),
    fz: real(0.02, 0.3),
    vc: real(30, 500),
    interrupted: fc.boolean(),
  }),
);

export const anyPart: fc.Arbitrary<Part> = fc.record({
  ...Object.fromEntries(Object.entries(EXAMPLE_PART).map(([key, value]) => [key, fc.constant(value)])),
  shape: fc.constantFrom('block' as const, 'round' as const),
  size: fc.tuple(real(10, 400), real(10, 400), real(5, 300)),
  diameter: real(8, 300),
  length: real(10, 400),
  stands: fc.constantFrom('upright' as const, 'lying' as const),
  material: fc.constantFrom(...MATERIAL_IDS),
  mass: fc.oneof(fc.constant('unknown' as const), real(0.1, 80)),
  fill: real(0.1, 1),
  approaches,
  motion: fc.constantFrom(...MOTIONS),
  depthTop: real(0, 80),
  depthSide: real(0, 80),
  lowestSideFeature: real(0, 100),
  tolerance: real(0.005, 0.4),
  holding: fc.record({
    by: fc.constantFrom(...HOLDINGS),
    diameter: real(0, 300),
    height: real(0, 150),
    mass: real(0, 30),
  }),
  eccentricity: fc.oneof(fc.constant(0), real(0, 80)),
  cut,
  contourCut: cut,
  drill: fc.oneof(
    fc.constant(null),
    fc.record({ diameter: real(2, 20), feed: real(0.03, 0.4), offset: real(0, 150) }),
  ),
  contour: fc.record({ feed: real(200, 6000), radius: real(5, 150), chordError: real(0.001, 0.02) }),
}) as unknown as fc.Arbitrary<Part>;

export const anyRotary: fc.Arbitrary<Rotary> = fc
  .record({
    class: fc.constantFrom('collet-indexer', 'single-axis', 'single-support', 'trunnion'),
    faceplate: fc.oneof(fc.constant(null), real(80, 500)),
    collet: fc.oneof(fc.constant(null), real(10, 60)),
    swing: real(100, 700),
    centerHeight: real(80, 350),
    faceOffset: real(-120, 80),
    tilt: fc.tuple(real(-110, 0), real(30, 120)),
    tiltClearRadius: real(80, 500),
    payload: fc.record({ level: real(10, 300), tilted: real(5, 200) }),
    tiltMoment: real(5, 800),
    brakeTorque: fc.record({ rotary: real(50, 2500), tilt: real(50, 4000) }),
    driveTorque: fc.record({ rotary: real(20, 900), tilt: real(20, 1500) }),
    inertia: real(0.02, 20),
    speed: fc.record({ rotary: real(5, 150), tilt: real(5, 90) }),
    accuracy: fc.record({ rotary: real(2, 60), tilt: real(2, 60) }),
    mass: real(20, 700),
    base: fc.record({
      along: real(200, 900),
      across: real(150, 600),
      centerAlong: real(80, 400),
      centerAcross: real(60, 300),
    }),
    housing: fc.oneof(
      fc.constant(null),
      fc.array(
        fc.record({
          along: fc.tuple(real(-300, -60), real(-59, 0)),
          across: fc.tuple(real(-200, -20), real(20, 200)),
          top: real(50, 500),
        }),
        { maxLength: 2 },
      ),
    ),
  })
  .map((change) => ({ ...EXAMPLE_ROTARY, ...change, tailstock: { length: 150, price: 2000 } }) as Rotary);

export const anyMachine: fc.Arbitrary<Machine> = fc
  .record({
    travel: fc.tuple(real(250, 1500), real(200, 800), real(200, 800)),
    size: fc.tuple(real(300, 1800), real(200, 900)),
    load: real(100, 2500),
    nose: fc.tuple(real(30, 300), real(320, 1000)),
    throat: real(250, 900),
    noseDiameter: real(50, 160),
    power: real(2, 40),
    torque: real(5, 400),
    speed: real(4000, 24000),
    positioning: real(0.002, 0.02),
    offered: fc.integer({ min: 0, max: 2 }),
    slots: fc.record({
      count: fc.integer({ min: 1, max: 9 }),
      width: fc.constantFrom(14, 18, 22),
      pitch: fc.constantFrom(63, 80, 100, 125),
    }),
    acceleration: real(1, 10),
    blocks: fc.record({
      standard: real(50, 1000),
      lookAhead: real(1000, 4000),
      ahead: real(5, 100),
      aheadWithLookAhead: real(100, 1000),
    }),
    probe: fc.constantFrom('standard' as const, 6000, undefined),
  })
  .map(({ size, load, slots, nose, power, torque, speed, offered, probe, ...change }) => {
    const { spindleProbe: _, ...others } = EXAMPLE_MACHINE.features;
    return {
      ...EXAMPLE_MACHINE,
      ...change,
      table: { size, load, height: 800, slots: { ...slots, center: true, along: 'x' } },
      noseToTable: nose,
      spindleDrive: { power, torque, speed, taper: 'unknown' },
      axisDrives: { fitted: 0, offered, priceEach: 4000 },
      features: probe === undefined ? others : { ...others, spindleProbe: probe },
    } as Machine;
  });

/** Strong enough that what decides is what is left random: size of table, travel, nose, price. */
export const strongRotary = anyRotary.map(
  (row): Rotary => ({
    ...row,
    class: row.class === 'collet-indexer' ? 'single-support' : row.class,
    faceplate: 200,
    swing: 300,
    tilt: [-30, 120],
    tiltClearRadius: 250,
    payload: { level: 90, tilted: 60 },
    tiltMoment: 300,
    brakeTorque: { rotary: 2000, tilt: 3000 },
    driveTorque: { rotary: 900, tilt: 1500 },
    accuracy: { rotary: 8, tilt: 8 },
    centerHeight: 130 + Number(row.mass) / 10,
    faceOffset: Number(row.faceOffset) / 3,
    housing: [],
    speed: { rotary: 150, tilt: 80 },
  }),
);
export const strongMachine = anyMachine.map(
  (row): Machine => ({
    ...row,
    travel: [700, 500, 600],
    spindleDrive: { power: 20, torque: 100, speed: 24000, taper: 'unknown' },
    axisDrives: { fitted: 0, offered: 2, priceEach: 4000 },
    throat: 800,
    blocks: { standard: 5000, lookAhead: 9000, ahead: 500, aheadWithLookAhead: 900 },
  }),
);

/** How the example is set up: raised, on plates, off the middle, turned. */
export const anySetting = fc.record({
  raised: fc.constantFrom(0, 75, 150),
  plates: fc.constantFrom(0, 30, 60),
  place: fc.record({ x: real(-200, 200), y: real(-80, 80), turned: fc.boolean() }),
});

const mountingFor = (rotary: Rotary, alongX: boolean): Mounting => {
  const oneAxis = rotary.class === 'single-axis' || rotary.class === 'collet-indexer';
  return `${oneAxis ? 'axis' : 'tilt'}-along-${alongX ? 'x' : 'y'}`;
};

/** The same rotary under a level tool: one axis on its back on the table, two as the machine's own table. */
function underLevelTool(machine: Machine, rotary: Rotary, alongX: boolean): Machine {
  const level: Machine = { ...machine, spindle: 'horizontal', spindleToTable: machine.noseToTable };
  if (rotary.class === 'collet-indexer' || rotary.class === 'single-axis') return level;
  const [x, y] = machine.travel.map((travel) => Number(travel) / 2) as [number, number];
  const { faceplate, swing, faceOffset, tilt, tiltClearRadius, payload, tiltMoment } = rotary;
  const { brakeTorque, driveTorque, inertia, speed, accuracy } = rotary;
  return {
    ...level,
    builtIn: {
      ...{ faceplate, swing, faceOffset, tilt, tiltClearRadius, payload, tiltMoment },
      ...{ brakeTorque, driveTorque, inertia, speed, accuracy },
      tiltAxis: alongX ? 'along-x' : 'along-y',
      leans: alongX ? 'downward' : 'toward-right',
      reach: { x: [-x, x], y: [-y, y], noseToFace: machine.noseToTable },
      removable: false,
      slots: { width: 14, pitch: 63 },
    },
  };
}

interface Stand {
  readonly rotary: Rotary;
  readonly machine: Machine;
  readonly mounting: Mounting;
}

/** A rotary on a machine, one in three under a level tool. */
export const anyStand: fc.Arbitrary<Stand> = fc
  .record({
    rotary: anyRotary,
    machine: anyMachine,
    alongX: fc.boolean(),
    tool: fc.constantFrom('upright', 'upright', 'level'),
  })
  .map(({ rotary, machine, alongX, tool }) => ({
    rotary,
    machine: tool === 'level' ? underLevelTool(machine, rotary, alongX) : machine,
    mounting: mountingFor(rotary, alongX && tool === 'upright'),
  }));
