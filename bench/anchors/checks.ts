import type { Machine, Part, Rotary } from './world.ts';

/** One check that separates: need of part and rotary ≤ have of the rest. */
export interface AnchorCheck {
  readonly id: string;
  readonly need: (part: Part, rotary: Rotary) => number;
  readonly have: (rotary: Rotary, machine: Machine, alongX: boolean, raised: number) => number;
  /** the last of rotary, machine, mounting and additions that the have hangs on */
  readonly haveOf: 'rotary' | 'machine' | 'mounting' | 'additions';
}

const GRAVITY = 9.80665;
const BRAKE_SAFETY = 2;
const EFFICIENCY = 0.8;
const APPROACH = 25;
const LONGEST_TOOL = 190;
const TOOL_MARGIN = 10;

/** Twelve of the kinds that the engine has, each in its simplest form; `json-expressions.ts` says the same as data. */
export const ANCHOR_CHECKS: readonly AnchorCheck[] = [
  {
    id: 'swing',
    need: (part) => 2 * (part.radius + part.eccentricity),
    have: (rotary) => rotary.swing,
    haveOf: 'rotary',
  },
  {
    id: 'faceplate',
    need: (part) => 2 * part.radius,
    have: (rotary) => rotary.faceplate,
    haveOf: 'rotary',
  },
  {
    id: 'payload',
    need: (part) => part.mass + part.fixtureMass,
    have: (rotary) => rotary.payload,
    haveOf: 'rotary',
  },
  {
    id: 'tilt-range',
    need: (part) => part.angle,
    have: (rotary) => rotary.tilt,
    haveOf: 'rotary',
  },
  {
    id: 'tilt-moment',
    need: (part, rotary) =>
      ((part.mass + part.fixtureMass) *
        GRAVITY *
        Math.abs(rotary.faceOffset + part.fixtureHeight + part.height / 2)) /
      1000,
    have: (rotary) => rotary.tiltMoment,
    haveOf: 'rotary',
  },
  {
    id: 'brake',
    need: (part) => (BRAKE_SAFETY * part.force * (part.radius + part.eccentricity)) / 1000,
    have: (rotary) => rotary.brake,
    haveOf: 'rotary',
  },
  {
    id: 'table-load',
    need: (part, rotary) => rotary.mass + part.mass + part.fixtureMass,
    have: (_, machine) => machine.load,
    haveOf: 'machine',
  },
  {
    id: 'spindle-power',
    need: (part) => part.power / EFFICIENCY,
    have: (_, machine) => machine.power,
    haveOf: 'machine',
  },
  {
    id: 'spindle-torque',
    need: (part) => part.torque,
    have: (_, machine) => machine.torque,
    haveOf: 'machine',
  },
  {
    id: 'travel-along',
    need: (part) => 2 * (part.radius + part.eccentricity + TOOL_MARGIN),
    have: (_, machine, alongX) => (alongX ? machine.travelX : machine.travelY),
    haveOf: 'mounting',
  },
  {
    id: 'travel-across',
    need: (part, rotary) => 2 * (rotary.faceOffset + part.fixtureHeight + part.height + TOOL_MARGIN),
    have: (_, machine, alongX) => (alongX ? machine.travelY : machine.travelX),
    haveOf: 'mounting',
  },
  {
    id: 'reach-high',
    need: (part, rotary) =>
      rotary.centerHeight + rotary.faceOffset + part.fixtureHeight + part.height + APPROACH + LONGEST_TOOL,
    have: (_, machine, __, raised) => machine.noseTop + raised,
    haveOf: 'additions',
  },
];
