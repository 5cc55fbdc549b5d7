import type { Rotary } from '../../src/catalog/catalog.ts';
import { tSlotOfWidth } from '../../src/mechanics/building/t-slots.ts';
import { COMMON_PRACTICE, known, type Rule } from './rule.ts';

const GRAVITY = 9.80665;
const tilts = (row: Rotary): boolean => row.tilt !== null;

/** What the slots see of the base: its extent across slots that run along X. */
const acrossSlots = (row: Rotary, mounting: string): number =>
  known(mounting.endsWith('-x') ? row.base.across : row.base.along);

const bolted = (row: Rotary) =>
  row.hold === 'unknown'
    ? []
    : Object.entries(row.hold).flatMap(([mounting, hold]) =>
        (hold.pitches === 'unknown' ? [] : hold.pitches).map((pitch) => ({
          mounting,
          pitch,
          slot: tSlotOfWidth(known(hold.keyWidth)),
        })),
      );

const holdOf = (row: Rotary, pitches: readonly number[]): Rotary => ({
  ...row,
  hold: { 'tilt-along-x': { keyWidth: 18, pitches } },
});

/** Geometry: what turns has to pass what stands. */
const GEOMETRY: readonly Rule<Rotary>[] = [
  {
    says: 'the faceplate is sunk in a trunnion and stands proud on a single support',
    reason: 'a cradle carried at both ends brings the load near the axis, a single arm cannot',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      (row.class === 'trunnion' && known(row.faceOffset) >= 0) ||
      (row.class === 'single-support' && known(row.faceOffset) < 0),
    of: 'dotterel',
    spoil: (row) => ({ ...row, faceOffset: 30 }),
  },
  {
    says: 'the base is longer and wider than the faceplate',
    reason: 'bearings and drive stand around it',
    source: COMMON_PRACTICE,
    breaks: (row) => Math.min(known(row.base.along), known(row.base.across)) <= known(row.faceplate),
    of: 'plover',
    spoil: (row) => ({ ...row, base: { ...row.base, across: 120 } }),
  },
  {
    says: 'a trunnion is at least one and a half times as long as its swing',
    reason: 'both supports stand outside what turns',
    source: COMMON_PRACTICE,
    breaks: (row) => row.class === 'trunnion' && known(row.base.along) < 1.5 * known(row.swing),
    of: 'nuthatch',
    spoil: (row) => ({ ...row, base: { ...row.base, along: 300 } }),
  },
  {
    says: 'the rotary axis stands within the base',
    reason: 'the load would tip it otherwise',
    source: COMMON_PRACTICE,
    breaks: ({ base }) =>
      known(base.centerAlong) <= 0 ||
      known(base.centerAlong) > known(base.along) ||
      known(base.centerAcross) <= 0 ||
      known(base.centerAcross) >= known(base.across),
    of: 'wren',
    spoil: (row) => ({ ...row, base: { ...row.base, centerAcross: 200 } }),
  },
  {
    says: 'the housing stands on the base and below the overall height',
    reason: 'both are read off the same drawing',
    source: 'geometry',
    breaks: ({ base, housing, height }) =>
      (housing ?? []).some(
        (box) =>
          box.along[0] < -known(base.centerAlong) ||
          box.along[1] > known(base.along) - known(base.centerAlong) ||
          box.across[0] < -known(base.centerAcross) ||
          box.across[1] > known(base.across) - known(base.centerAcross) ||
          box.top > known(height),
      ),
    of: 'turnstone',
    spoil: (row) => ({
      ...row,
      housing: [{ along: [195, 500], across: [-230, 230], top: 410 }],
    }),
  },
  {
    says: 'the housing of a tilting table stays outside its swing',
    reason: 'the largest work has to pass it on every turn',
    source: 'geometry',
    breaks: (row) =>
      tilts(row) &&
      (row.housing ?? []).some((box) => Math.min(...box.along.map(Math.abs)) < known(row.swing) / 2),
    of: 'lapwing',
    spoil: (row) => ({
      ...row,
      housing: [{ along: [100, 330], across: [-165, 165], top: 310 }],
    }),
  },
  {
    says: 'nothing turns above the overall height at tilt 0',
    reason: 'the height is that of the highest point',
    source: 'geometry',
    breaks: (row) =>
      known(row.height) <
      known(row.centerHeight) +
        (tilts(row) ? known(row.faceOffset) : row.faceplate === null ? 0 : known(row.faceplate) / 2),
    of: 'siskin',
    spoil: (row) => ({ ...row, height: 90 }),
  },
  {
    says: 'the bar that a collet indexer takes is at most a third of its swing',
    reason: 'collet, closer and bearing stand around the bar',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.collet) > known(row.swing) / 3,
    of: 'pipit',
    spoil: (row) => ({ ...row, collet: 80 }),
  },
];

/** Loads: what it carries, turns and holds belong together. */
const LOADS: readonly Rule<Rotary>[] = [
  {
    says: 'the rated tilting moment is the tilted payload at a height that the work can have',
    reason: 'moment = weight × distance of the center of mass from the tilt axis',
    source: 'statics',
    breaks: (row) => {
      const height = (known(row.tiltMoment) / known(row.payload.tilted) / GRAVITY) * 1000;
      return tilts(row) && (height < known(row.swing) / 8 || height > known(row.tiltClearRadius));
    },
    of: 'crake',
    spoil: (row) => ({ ...row, tiltMoment: 900 }),
  },
  {
    says: 'the tilt brake holds at least twice the rated moment',
    reason: 'the moment of the load and the cut act together',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.brakeTorque.tilt) < 2 * known(row.tiltMoment),
    of: 'bittern',
    spoil: (row) => ({
      ...row,
      brakeTorque: { ...row.brakeTorque, tilt: 1500 },
    }),
  },
  {
    says: 'the rotary brake holds at least twice the tilted payload hung on the rim',
    reason: 'an off-center load on a level axis pulls at the brake before any cut does',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      known(row.brakeTorque.rotary) < (2 * known(row.payload.tilted) * GRAVITY * known(row.faceplate)) / 2000,
    of: 'fieldfare',
    spoil: (row) => ({
      ...row,
      brakeTorque: { ...row.brakeTorque, rotary: 1000 },
    }),
  },
  {
    says: 'a brake holds at least twice what its drive turns',
    reason: 'a clamp grips a disc, a drive works through a gear',
    source: COMMON_PRACTICE,
    breaks: ({ brakeTorque, driveTorque }) =>
      known(brakeTorque.rotary) < 2 * known(driveTorque.rotary) ||
      known(brakeTorque.tilt) < 2 * known(driveTorque.tilt),
    of: 'dunlin',
    spoil: (row) => ({
      ...row,
      driveTorque: { ...row.driveTorque, rotary: 300 },
    }),
  },
  {
    says: 'the tilt drive lifts the rated moment',
    reason: 'what may be put on has to be raised as well',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.driveTorque.tilt) < known(row.tiltMoment),
    of: 'godwit',
    spoil: (row) => ({
      ...row,
      driveTorque: { ...row.driveTorque, tilt: 200 },
    }),
  },
  {
    says: 'the rated inertia is at least that of the payload as a disc on the faceplate',
    reason: 'a load that may be put on may be turned: ½·m·r²',
    source: 'mechanics of a disc',
    breaks: (row) => known(row.inertia) < 0.5 * known(row.payload.level) * (known(row.faceplate) / 2000) ** 2,
    of: 'wheatear',
    spoil: (row) => ({ ...row, inertia: 1 }),
  },
  {
    says: 'the tilt axis is no faster than the rotary axis',
    reason: 'it swings the heavier half',
    source: COMMON_PRACTICE,
    breaks: ({ speed }) => known(speed.tilt) > known(speed.rotary),
    of: 'whinchat',
    spoil: (row) => ({ ...row, speed: { rotary: 40, tilt: 60 } }),
  },
  {
    says: 'it weighs between 1.5 and 5.5 t a cubic meter of base × height',
    reason: 'iron with a cavity for the gear; less is a missing digit, more is lead',
    source: COMMON_PRACTICE,
    breaks: ({ mass, base, height }) => {
      const density = known(mass) / ((known(base.along) * known(base.across) * known(height)) / 1e9);
      return density < 1500 || density > 5500;
    },
    of: 'dipper',
    spoil: (row) => ({ ...row, mass: 420 }),
  },
  {
    says: 'what two people should not carry has at least two lifting points',
    reason: 'a load on one eye turns',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.mass) > 50 && known(row.liftingPoints) < 2,
    of: 'redstart',
    spoil: (row) => ({ ...row, liftingPoints: 1 }),
  },
];

/** How it is held, and what goes with it. */
const HOLDING: readonly Rule<Rotary>[] = [
  {
    says: 'bolts stand at whole numbers of a pitch that goes with the width of its key',
    reason: 'a base is drilled for tables that exist',
    source: 'ISO 299 widths and pitches',
    breaks: (row) =>
      bolted(row).some(
        ({ pitch, slot }) => slot === undefined || !slot.pitches.some((of) => pitch % of === 0),
      ),
    of: 'dotterel',
    spoil: (row) => holdOf(row, [270]),
  },
  {
    says: 'bolts stand on the base',
    reason: 'a lug outside of it holds nothing',
    source: 'geometry',
    breaks: (row) => bolted(row).some(({ mounting, pitch }) => pitch > acrossSlots(row, mounting)),
    of: 'dotterel',
    spoil: (row) => holdOf(row, [400]),
  },
  {
    says: 'a tailstock costs less than a fifth of its rotary',
    reason: 'it has no drive',
    source: COMMON_PRACTICE,
    breaks: (row) => row.tailstock !== null && known(row.tailstock.price) > known(row.price) / 5,
    of: 'redstart',
    spoil: (row) => ({ ...row, tailstock: { length: 210, price: 9000 } }),
  },
];

export const ROTARY_RULES: readonly Rule<Rotary>[] = [...GEOMETRY, ...LOADS, ...HOLDING];
