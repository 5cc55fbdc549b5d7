import { type Chance, chanceOf } from '../interviews/chance.ts';

/** A made-up world for twelve checks that separate: mm, kg, N, N·m, kW, degrees. */
export interface Part {
  readonly radius: number;
  readonly height: number;
  readonly mass: number;
  readonly eccentricity: number;
  readonly fixtureHeight: number;
  readonly fixtureMass: number;
  readonly angle: number;
  readonly force: number;
  readonly power: number;
  readonly torque: number;
}

export interface Rotary {
  readonly swing: number;
  readonly faceplate: number;
  readonly payload: number;
  readonly tilt: number;
  readonly tiltMoment: number;
  readonly brake: number;
  readonly faceOffset: number;
  readonly centerHeight: number;
  readonly mass: number;
}

export interface Machine {
  readonly load: number;
  readonly travelX: number;
  readonly travelY: number;
  readonly noseTop: number;
  readonly power: number;
  readonly torque: number;
}

export interface World {
  readonly parts: readonly Part[];
  readonly rotaries: readonly Rotary[];
  readonly machines: readonly Machine[];
  /** whether the tilt axis lies along X: both ways to mount a rotary */
  readonly alongX: readonly boolean[];
  /** how far each set of additions raises the nose, mm */
  readonly raised: readonly number[];
}

export interface WorldSize {
  readonly machines: number;
  readonly rotaries: number;
  readonly parts: number;
}

/** The same for the same size: two mountings and four sets of additions for each machine and rotary. */
export function worldOf({ machines, rotaries, parts }: WorldSize): World {
  const chance = chanceOf(12);
  return {
    parts: Array.from({ length: parts }, () => anyPart(chance)),
    rotaries: Array.from({ length: rotaries }, () => anyRotary(chance)),
    machines: Array.from({ length: machines }, () => anyMachine(chance)),
    alongX: [true, false],
    raised: [0, 100, 200, 300],
  };
}

const anyPart = ({ between, pick }: Chance): Part => ({
  radius: between(15, 180),
  height: between(20, 220),
  mass: between(0.2, 60, 0.1),
  eccentricity: pick([0, 0, 5, 20]),
  fixtureHeight: between(20, 90),
  fixtureMass: between(1, 30, 0.5),
  angle: between(0, 110, 5),
  force: between(200, 6000, 50),
  power: between(0.5, 20, 0.1),
  torque: between(2, 150),
});

const anyRotary = ({ between }: Chance): Rotary => ({
  swing: between(120, 600),
  faceplate: between(100, 500),
  payload: between(10, 250),
  tilt: between(30, 120, 5),
  tiltMoment: between(10, 500),
  brake: between(100, 3000, 10),
  faceOffset: between(-80, 60),
  centerHeight: between(110, 350),
  mass: between(40, 700),
});

const anyMachine = ({ between }: Chance): Machine => ({
  load: between(200, 2500, 10),
  travelX: between(300, 1500, 10),
  travelY: between(250, 800, 10),
  noseTop: between(400, 1000, 5),
  power: between(5, 40),
  torque: between(20, 400, 5),
});

/** What one check looks at. */
export interface Case {
  readonly part: Part;
  readonly rotary: Rotary;
  readonly machine: Machine;
  readonly alongX: boolean;
  readonly raised: number;
}

/** Every case of a world, arrangement by arrangement. */
export function* casesOf({ parts, rotaries, machines, alongX, raised }: World): Generator<Case> {
  for (const rotary of rotaries)
    for (const machine of machines)
      for (const along of alongX)
        for (const raise of raised)
          for (const part of parts) yield { part, rotary, machine, alongX: along, raised: raise };
}

export const casesIn = ({ parts, rotaries, machines, alongX, raised }: World): number =>
  parts.length * rotaries.length * machines.length * alongX.length * raised.length;
