import type { BuiltIn, Catalog, Machine, Rotary } from '../../src/catalog/catalog.ts';
import { type Answers, MEASURES, type Part } from '../../src/questions/answers.ts';
import type { Candidate } from '../../src/rules/arranging/candidates.ts';
import { groundOf, withPart } from '../../src/rules/arranging/setting.ts';
import type { ExampleGiven } from '../../src/rules/checks/example.ts';
import { EXAMPLE_HOIST } from '../../src/rules/checks/example-means.ts';
import { machineCase } from '../../src/rules/facts/machine-facts.ts';
import { partCases } from '../../src/rules/facts/part-facts.ts';
import { builtInCase, onItsBack, rotaryCase } from '../../src/rules/facts/rotary-facts.ts';
import { shopCase } from '../../src/rules/facts/shop-facts.ts';
import { acrossKinds } from '../../src/rules/judging/across-kinds.ts';
import type { Case } from '../../src/rules/judging/case.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import { freshMemo } from '../../src/rules/judging/memo.ts';
import { judge, nothingNeeded, type Outcome } from '../../src/rules/judging/outcome.ts';
import { known } from '../../src/rules/judging/value.ts';

/** Invented: one part, one rotary, one mill, all of it known, so that an example changes only what it is about. */

const from = { file: 'example', line: 1, maker: 'invented', document: 'invented', date: 'unknown' } as const;

export const EXAMPLE_PART: Part = {
  name: 'Example',
  shape: 'block',
  size: [90, 60, 55],
  diameter: 'unknown',
  length: 'unknown',
  stands: 'upright',
  material: 'aluminum-wrought',
  mass: 'unknown',
  fill: 1,
  approaches: ['top', 'sides'],
  bottom: false,
  motion: 'positional',
  depthTop: 20,
  depthSide: 20,
  lowestSideFeature: 10,
  tolerance: 0.2,
  holding: { by: 'fixture', diameter: 100, height: 40, mass: 4 },
  eccentricity: 0,
  cut: 'light',
  contourCut: 'light',
  drill: null,
  contour: { feed: 1000, radius: 30, chordError: 0.005 },
  yearly: { quantity: 400, lots: 12, setups: 4, setupMinutes: 35, cycleMinutes: 18, handlingMinutes: 3 },
  must: false,
};

export const EXAMPLE_ROTARY: Rotary = {
  id: 'example-rotary',
  name: 'Example rotary',
  class: 'single-support',
  faceplate: 125,
  nose: 'none',
  collet: null,
  swing: 200,
  centerHeight: 150,
  faceOffset: 40,
  tilt: [-20, 110],
  tiltClearRadius: 200,
  base: { along: 420, across: 260, centerAlong: 140, centerAcross: 130 },
  housing: [],
  mass: 95,
  payload: { level: 35, tilted: 20 },
  tiltMoment: 40,
  brakeTorque: { rotary: 400, tilt: 800 },
  driveTorque: { rotary: 200, tilt: 300 },
  inertia: 1,
  speed: { rotary: 80, tilt: 50 },
  accuracy: { rotary: 15, tilt: 15 },
  hold: {
    'tilt-along-x': { keyWidth: 18, pitches: [80] },
    'tilt-along-y': { keyWidth: 18, pitches: [80, 160] },
    'axis-along-x': { keyWidth: 18, pitches: [80] },
    'axis-along-y': { keyWidth: 18, pitches: [80] },
  },
  height: 300,
  tailstock: null,
  liftingPoints: 2,
  air: { bar: 5 },
  price: 28500,
  from,
};

export const EXAMPLE_MACHINE: Machine = {
  id: 'example-mill',
  name: 'Example mill',
  kind: 'mill',
  spindle: 'vertical',
  travel: [760, 510, 510],
  table: {
    size: [915, 460],
    height: 850,
    load: 680,
    slots: { count: 5, width: 18, pitch: 80, center: true, along: 'x' },
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
  features: {
    toolCenterPoint: 9500,
    rotatingWorkOffset: 4200,
    tiltedWorkPlane: 'standard',
    spindleProbe: 6800,
    lookAhead: 3900,
  },
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
};

/** The table of a five-axis machine, for examples that ask for one. */
export const EXAMPLE_BUILT_IN: BuiltIn = {
  faceplate: 200,
  swing: 260,
  faceOffset: 0,
  tilt: [-30, 110],
  tiltAxis: 'along-x',
  leans: 'toward-door',
  tiltClearRadius: 215,
  payload: { level: 60, tilted: 40 },
  tiltMoment: 60,
  brakeTorque: { rotary: 600, tilt: 1100 },
  driveTorque: { rotary: 180, tilt: 350 },
  inertia: 0.6,
  speed: { rotary: 100, tilt: 60 },
  accuracy: { rotary: 6, tilt: 8 },
  reach: { x: [-380, 380], y: [-255, 255], noseToFace: [90, 600] },
  removable: false,
  slots: { width: 14, pitch: 63 },
};

export const EXAMPLE_ANSWERS: Answers = {
  format: 'fivesides-answers/1',
  units: 'mm',
  currency: 'EUR',
  parts: [EXAMPLE_PART],
  tools: { shortest: 90, longest: 150, largestCutter: 20 },
  shop: {
    machine: 'none',
    bay: [6000, 5000],
    ceiling: 4000,
    doorway: { width: 3000, height: 3000 },
    doorSill: 1100,
    floorRating: 15,
    power: { kVA: 40, volts: 400, phases: 3 },
    air: { flow: 300, bar: 7 },
    lifting: [{ ...EXAMPLE_HOIST, capacity: 2000 }],
  },
  work: {
    threeAxisShare: 0.4,
    switchesPerWeek: 3,
    visesWanted: 2,
    vise: { width: 152, length: 450, height: 75 },
    loading: 'by-hand',
    swap: 'keyed',
  },
  money: {
    budget: 180000,
    shopRate: 70,
    years: 5,
    interest: 0.06,
    rigging: 4000,
    training: 3000,
    yearlyCosts: 2500,
    residual: 'unknown',
    plates: 900,
  },
  control: { cam: 'threeAxis' },
  matters: [...MEASURES],
  assume: {},
};

export const EXAMPLE_CATALOG: Catalog = {
  format: 'fivesides-catalog/1',
  units: 'mm',
  currency: 'EUR',
  rotaries: [EXAMPLE_ROTARY],
  machines: [EXAMPLE_MACHINE],
};

/** Objects are merged key by key; lists and single values are put in place of what was there. */
export function merged<T>(base: T, change: unknown): T {
  if (change === undefined) return base;
  if (typeof change !== 'object' || change === null || Array.isArray(change)) return change as T;
  if (typeof base !== 'object' || base === null || Array.isArray(base)) return change as T;
  const result = { ...base } as Record<string, unknown>;
  for (const [key, value] of Object.entries(change)) {
    if (value === undefined) delete result[key];
    else result[key] = merged(result[key], value);
  }
  return result as T;
}

export interface ExampleWorld {
  readonly answers: Answers;
  readonly part: Part;
  readonly cases: readonly Case[];
}

/** The machine with its own table, or with the rotary on it: on its back under a level tool. */
function candidateOf(given: ExampleGiven): Candidate {
  const { builtIn, ...others } = given.machine ?? {};
  const row = merged(EXAMPLE_MACHINE, others);
  if (builtIn !== undefined && builtIn !== null) {
    const own = merged(EXAMPLE_BUILT_IN, builtIn);
    const machine: Machine = { ...row, kind: 'five-axis', table: null, noseToTable: 'unknown', builtIn: own };
    return {
      id: 'example',
      machine: machineCase(machine),
      rotary: builtInCase(machine, own),
      mounting: 'built-in',
    };
  }
  const rotary = rotaryCase(merged(EXAMPLE_ROTARY, given.rotary));
  const upright = rotary.axes === 1 && row.spindle === 'horizontal';
  const usual = rotary.axes === 1 ? (upright ? 'axis-along-y' : 'axis-along-x') : 'tilt-along-x';
  return {
    id: 'example',
    machine: machineCase(row),
    rotary: upright ? onItsBack(rotary) : rotary,
    mounting: given.mounting ?? usual,
  };
}

/** The example shop with the changes of one example. */
export function exampleWorld(given: ExampleGiven): ExampleWorld {
  const part = merged(EXAMPLE_PART, given.part);
  const answers: Answers = {
    ...EXAMPLE_ANSWERS,
    parts: [part],
    shop: merged(EXAMPLE_ANSWERS.shop, given.shop),
    tools: merged(EXAMPLE_ANSWERS.tools, given.tools),
    work: merged(EXAMPLE_ANSWERS.work, given.work),
    money: merged(EXAMPLE_ANSWERS.money, given.money),
  };
  const candidate = candidateOf(given);
  const shop = shopCase(answers);
  const world = { shop, memo: freshMemo() };
  const raised = given.raised ?? 0;
  const heightened = given.heightened ?? 0;
  const setting = {
    additions:
      raised === 0 && heightened === 0
        ? []
        : [{ kind: 'lowered-table', adds: raised, price: 0, height: heightened } as const],
    plates: given.plates ?? 0,
    place: { x: 0, y: 0, turned: false, ...given.place },
  };
  const price = known(120000, 'price');
  const ground = groundOf(world, candidate, setting, price, known(given.swaps ?? 0, 'swaps'));
  const cases = partCases(part, shop).map((each) => withPart(ground, each));
  return { answers, part, cases };
}

/** What a check says of an example, over every kind that it leaves open. */
export function judgeExample(check: Check, given: ExampleGiven): Outcome {
  const { cases } = exampleWorld(given);
  return acrossKinds(cases, (of) => (check.applies(of) ? judge(check, of) : nothingNeeded(check, of)), true);
}
