import type { Family } from '../../src/rules/arranging/family.ts';
import { barred, refuse } from '../../src/rules/fast/barred.ts';
import type { Case, MachineCase, PartCase, RotaryCase, ShopCase } from '../../src/rules/judging/case.ts';
import { idOf, type Memo } from '../../src/rules/judging/memo.ts';
import { known, type Value } from '../../src/rules/judging/value.ts';
import type { Machine, Part, Rotary, World } from './world.ts';

const value = (of: number): Value => known(of, 'made up');

/** The things of a made-up world as the engine has them; of what the twelve checks do not read there is nothing. */
const partOf = (part: Part, slot: number): PartCase =>
  ({
    key: String(slot),
    slot,
    planRadius: value(part.radius),
    eccentricity: value(part.eccentricity),
    height: value(part.height),
    mass: value(part.mass),
    fixtureHeight: value(part.fixtureHeight),
    fixtureMass: value(part.fixtureMass),
    tilt: value(part.angle),
    cut: { force: value(part.force), power: value(part.power), torque: value(part.torque) },
  }) as Partial<PartCase> as PartCase;

const rotaryOf = (rotary: Rotary, at: number): RotaryCase =>
  ({
    key: `rotary ${at}`,
    axes: 2,
    gravity: 'tool',
    swing: value(rotary.swing),
    faceplate: value(rotary.faceplate),
    payloadLevel: value(rotary.payload),
    tiltGreatest: value(rotary.tilt),
    tiltMoment: value(rotary.tiltMoment),
    brakeRotary: value(rotary.brake),
    faceOffset: value(rotary.faceOffset),
    centerHeight: value(rotary.centerHeight),
    mass: value(rotary.mass),
  }) as Partial<RotaryCase> as RotaryCase;

const machineOf = (machine: Machine, at: number): MachineCase =>
  ({
    key: `machine ${at}`,
    tableLoad: value(machine.load),
    travelX: value(machine.travelX),
    travelY: value(machine.travelY),
    noseTop: value(machine.noseTop),
    power: value(machine.power),
    torque: value(machine.torque),
  }) as Partial<MachineCase> as MachineCase;

export interface OwnWorld {
  readonly families: readonly Family[];
  readonly rotaries: readonly RotaryCase[];
  readonly machines: readonly MachineCase[];
  readonly mountings: readonly Case['mounting'][];
  readonly raised: readonly Value[];
}

export const ownWorld = ({ parts, rotaries, machines, alongX, raised }: World): OwnWorld => ({
  families: parts.map((part, slot) => ({
    name: `part ${slot}`,
    slot,
    must: false,
    hours: value(1),
    onRotary: {} as Family['onRotary'],
    cases: [partOf(part, slot)],
  })),
  rotaries: rotaries.map(rotaryOf),
  machines: machines.map(machineOf),
  mountings: alongX.map((along) => (along ? 'tilt-along-x' : 'tilt-along-y')),
  raised: raised.map(value),
});

/** None of it is read. */
export const NO_SHOP = {} as ShopCase;

/** What may be read of an arrangement. */
export interface Halves {
  readonly rotary: RotaryCase;
  readonly mounting: Case['mounting'];
  readonly machine: MachineCase;
  readonly raised: Value;
}

/** What is not given may not be read. */
export function groundOn(memo: Memo, of: Partial<Halves>): Case {
  const { rotary, machine, mounting, raised } = of;
  const id = (room: 'rotary' | 'machine' | 'mounting' | 'additions', name: string | undefined): number =>
    name === undefined ? Number.NaN : idOf(memo, room, name);
  return {
    keys: {
      part: 0,
      rotary: id('rotary', rotary?.key),
      mounting: id('mounting', mounting),
      machine: id('machine', machine?.key),
      additions: id('additions', raised === undefined ? undefined : String(raised.low)),
      plates: 0,
      turn: 0,
      place: Number.NaN,
      price: Number.NaN,
      swaps: Number.NaN,
    },
    memo,
    shop: NO_SHOP,
    rotary: rotary ?? barred(),
    machine: machine ?? barred(),
    raised: raised ?? barred(),
    get mounting() {
      return mounting ?? refuse();
    },
    part: null,
    orientation: [],
    withParts: new Map(),
  } as Partial<Case> as Case;
}
