import { MATERIALS } from '../../mechanics/forces/materials.ts';
import { type Answers, MEASURES, type Part } from '../../questions/answers.ts';
import { BLANK_MEANS } from '../../questions/lifting/means.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import type { Candidate } from '../../rules/arranging/candidates.ts';
import type { MachineCase, RotaryCase } from '../../rules/judging/case.ts';
import { merged } from '../examples/merged.ts';
import type { Base } from './recipe.ts';
import { onGrid, type Seeded } from './seeded.ts';

/** Invented: what a shop that builds lock gates and sluices might cut. */
const PART_NAMES = [
  'Sluice bracket',
  'Gate roller',
  'Hinge block',
  'Paddle arm',
  'Rack guide',
  'Winch cheek',
  'Latch body',
  'Spillway cap',
] as const;

const GRAVITY = 9.80665;
const G_PER_MM3 = 1e-9;

/**
 * Answers of a shop in which one arrangement holds comfortably, as far as that can be told beforehand: the part is small for the
 * rotary, the supply ample for the machine. Numbers are round. Whether it does hold has to be judged.
 */
export function calmShop({ machine, rotary }: Candidate, draw: Seeded, base: Base = {}): Answers {
  const part = calmPart(rotary, draw, base);
  const shortest = draw.oneOf([60, 70, 80, 90]);
  const { row } = machine;
  const up = (value: number | 'unknown', share: number, step: number): number =>
    value === 'unknown' ? ('unknown' as never) : onGrid(Math.ceil((value * share) / step) * step);
  const sum = (...all: readonly (number | 'unknown')[]): number =>
    all.reduce<number>((total, each) => total + (each === 'unknown' ? 0 : each), 0);
  const [width, depth, height] = row.footprint;
  const bay = [
    up(sum(width, row.service.left, row.service.right), 1.5, 500),
    up(sum(depth, row.service.front, row.service.rear), 1.5, 500),
  ] as const;
  const price = sum(row.price, rotary.row?.price ?? 0);
  const calm: Answers = {
    format: 'fivesides-answers/1',
    units: 'mm',
    currency: 'EUR',
    parts: [part],
    tools: {
      shortest,
      longest: shortest + draw.oneOf([30, 40, 50, 60]) + (base.longer ?? 0),
      largestCutter: draw.oneOf([12, 16, 20]),
    },
    shop: {
      machine: 'none',
      bay: [Math.max(...bay), Math.min(...bay)],
      ceiling: up(height, 1.5, 250),
      doorway: { width: up(row.shipping[1], 1.6, 100), height: up(row.shipping[2], 1.5, 100) },
      doorSill: 1000,
      floorRating: 30,
      power: { kVA: up(row.power.kVA, 1.6, 5), volts: row.power.volts, phases: row.power.phases },
      air: {
        flow: up(row.air?.flow ?? 'unknown', 2, 50),
        bar: 9,
      },
      lifting: [hoistFor(rotary, machine)],
    },
    work: {
      threeAxisShare: 0.2,
      switchesPerWeek: 1,
      visesWanted: 0,
      vise: { width: 125, length: 350, height: 75 },
      loading: 'by-hand',
      swap: 'keyed',
    },
    money: {
      budget: onGrid(Math.ceil((price * 1.6 + 30000) / 5000) * 5000),
      shopRate: 70,
      years: 5,
      interest: 0.05,
      rigging: 4000,
      training: 4000,
      yearlyCosts: 2000,
      residual: 0,
      plates: 800,
    },
    control: { cam: 'fiveAxis' },
    matters: [...MEASURES],
    assume: {},
  };
  const first = merged(part, base.part);
  const others = (base.others ?? []).map((change, index) =>
    merged({ ...first, name: nameBehind(first.name, index) }, change),
  );
  return {
    ...calm,
    parts: [first, ...others],
    work: merged(calm.work, base.work),
    tools: merged(calm.tools, base.tools),
  };
}

const nameBehind = (name: string, index: number): string => {
  const at = (PART_NAMES as readonly string[]).indexOf(name);
  return PART_NAMES[(at + index + 1) % PART_NAMES.length] ?? name;
};

function hoistFor(rotary: RotaryCase, { row: { table } }: MachineCase) {
  const up = (value: number, step: number): number => Math.ceil(value / step) * step;
  const height = table === null || table.height === 'unknown' ? 1000 : table.height;
  return {
    ...BLANK_MEANS,
    by: 'hoist' as const,
    capacity: up(rotary.mass.low * 2 + 100, 50),
    hookHeight: up(height + 2200, 100),
    legs: 2,
    slingAngle: 60,
    slingHeight: 500,
    rigging: 10,
  };
}

/** What turns freely: above the table on a level axis, without limit on its back, and before the housing where it tilts. */
function clearance({ axes, gravity, centerHeight, tiltClearRadius }: RotaryCase): number {
  if (axes === 2) return tiltClearRadius.low * 1.3;
  return gravity === 'tool' ? 2 * (centerHeight.low - 5) : Number.POSITIVE_INFINITY;
}

function calmPart(rotary: RotaryCase, draw: Seeded, { by, load = 0.4, tall: tallness }: Base): Part {
  const collet = by === undefined && rotary.class === 'collet-indexer';
  const level = rotary.axes === 1;
  const room = Math.min(
    rotary.swing.low,
    clearance(rotary),
    rotary.faceplate.low > 0 && Number.isFinite(rotary.faceplate.low)
      ? rotary.faceplate.low * 1.4
      : Number.POSITIVE_INFINITY,
  );
  const round = collet || draw.oneOf(['block', 'block', 'round']) === 'round';
  const step = room < 200 ? 2 : 5;
  const diameter = collet
    ? Math.floor(rotary.collet.low * draw.oneOf([0.6, 0.7, 0.75]))
    : draw.share(room, 0.35, 0.5, step);
  const size = [
    draw.share(room, 0.3, 0.42, step),
    draw.share(room, 0.25, 0.34, step),
    draw.share(room, 0.2, 0.34, step),
  ] as const;
  const length = collet
    ? onGrid(Math.ceil(diameter * draw.oneOf([1.1, 1.3])))
    : draw.share(room, 0.2, 0.36, step);
  const tall = round ? length : size[2];
  const wide = round ? diameter : Math.min(size[0], size[1]);
  const holdingHeight =
    tallness !== undefined
      ? Math.min(Math.round((room * tallness) / 5) * 5, NOT_SURE['parts.holding.height'].high)
      : collet
        ? Math.ceil(diameter * 0.5)
        : level
          ? draw.share(room, 0.1, 0.2, 5)
          : draw.share(room, 0.12, 0.25, 5);
  const fixture = collet
    ? Math.ceil(diameter * 1.5)
    : onGrid(Math.ceil((round ? diameter : Math.hypot(size[0], size[1])) / 5) * 5);
  const volume = round ? (Math.PI / 4) * diameter ** 2 * length : size[0] * size[1] * size[2];
  const stands = rotary.faceOffset.low + holdingHeight + tall / 2;
  const most = Math.min(
    rotary.payloadTilted.low * 0.5,
    level
      ? Number.POSITIVE_INFINITY
      : (0.5 * rotary.tiltMoment.low) / (GRAVITY * Math.max(0.02, Math.abs(stands) / 1000)),
  );
  const material = 'aluminum-wrought' as const;
  const solid = volume * G_PER_MM3 * MATERIALS[material].density;
  const tenth = (value: number): number => Math.max(0.1, Math.round(value * 10) / 10);
  const depth = Math.max(5, Math.floor((Math.min(tall, wide) * 0.25) / 5) * 5);
  return {
    name: draw.oneOf(PART_NAMES),
    shape: round ? 'round' : 'block',
    size: round ? ['unknown', 'unknown', 'unknown'] : size,
    diameter: round ? diameter : 'unknown',
    length: round ? length : 'unknown',
    stands: round ? 'upright' : 'unknown',
    material,
    mass: tenth(Math.min(solid * 0.8, most * 0.4)),
    fill: 0.8,
    approaches: level ? ['around'] : ['top', 'sides'],
    bottom: false,
    motion: 'positional',
    depthTop: level ? 0 : depth,
    depthSide: depth,
    lowestSideFeature: Math.max(5, Math.floor((tall * 0.4) / 5) * 5),
    tolerance: 0.3,
    holding: {
      by: collet ? 'collet' : (by ?? 'fixture'),
      diameter: fixture,
      height: holdingHeight,
      mass: tenth(most * 2 * load),
    },
    eccentricity: 0,
    cut: { diameter: 10, teeth: 3, ap: 2, ae: 2, fz: 0.04, vc: 250, interrupted: false },
    contourCut: { diameter: 8, teeth: 2, ap: 0.5, ae: 0.5, fz: 0.03, vc: 250, interrupted: false },
    drill: null,
    contour: { feed: 800, radius: 40, chordError: 0.01 },
    yearly: { quantity: 400, lots: 10, setups: 4, setupMinutes: 30, cycleMinutes: 15, handlingMinutes: 3 },
    must: false,
  };
}
