import fc from 'fast-check';
import { glMatrix, mat4, vec3 } from 'gl-matrix';
import { describe, expect, it } from 'vitest';
import { oriented } from '../../../src/rules/arranging/oriented.ts';
import { part } from '../../../src/rules/inputs/part.ts';
import type { Case } from '../../../src/rules/judging/case.ts';
import { evaluateSide, evaluateTerm } from '../../../src/rules/judging/side.ts';
import { aboutRotaryAxis } from '../../../src/rules/sides/cutting-torque.ts';
import { gravityAboutTilt } from '../../../src/rules/sides/tilt-moment-need.ts';
import { expectClose } from '../../close-to.ts';
import { exampleWorld } from '../example-shop.ts';

/**
 * Gravity once more, with nothing of the engine in it: the work as two masses in space, tilted and turned step by
 * step, the moment as r × F. X to the right, Z along a level tool and up under an upright one.
 */

glMatrix.setMatrixArrayType(Array);
const G = 9.80665;
const DEGREE = Math.PI / 180;

interface Frame {
  /** along the tilt axis, and up along the tool at tilt 0 */
  readonly u: vec3;
  readonly w: vec3;
  readonly down: vec3;
}

const FRAMES = {
  'an upright tool': { u: [1, 0, 0], w: [0, 0, 1], down: [0, 0, -1] },
  'a level tool, its tilt axis level': { u: [1, 0, 0], w: [0, 0, 1], down: [0, -1, 0] },
  'a level tool, its tilt axis upright': { u: [0, 1, 0], w: [0, 0, 1], down: [0, -1, 0] },
} as const satisfies Record<string, Frame>;

interface Work {
  readonly mass: number;
  readonly fixtureMass: number;
  readonly faceOffset: number;
  readonly fixtureHeight: number;
  readonly height: number;
  readonly eccentricity: number;
  readonly tilt: number;
}

const works: fc.Arbitrary<Work> = fc.record({
  mass: fc.double({ min: 0.5, max: 80, noNaN: true }),
  fixtureMass: fc.double({ min: 0, max: 30, noNaN: true }),
  faceOffset: fc.double({ min: -150, max: 80, noNaN: true }),
  fixtureHeight: fc.double({ min: 0, max: 120, noNaN: true }),
  height: fc.double({ min: 5, max: 250, noNaN: true }),
  eccentricity: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 80, noNaN: true })),
  tilt: fc.integer({ min: 1, max: 120 }),
});

/** The greatest moments about the tilt axis and about the rotary axis, N·m, over tilt and turn. */
function sampled(
  work: Work,
  frame: Frame,
  tilts: readonly number[],
): { readonly tilt: number; readonly rotary: number } {
  const bottom = work.faceOffset + work.fixtureHeight;
  const middles: readonly [mass: number, height: number, off: number][] = [
    [work.mass, bottom + work.height / 2, work.eccentricity],
    [work.fixtureMass, work.faceOffset + work.fixtureHeight / 2, 0],
  ];
  let most = { tilt: 0, rotary: 0 };
  for (const tilt of tilts)
    for (let turn = 0; turn < 360; turn += 5) {
      const tilting = mat4.fromRotation(mat4.create(), tilt * DEGREE, frame.u);
      const turning = mat4.fromRotation(mat4.create(), turn * DEGREE, frame.w);
      const axis = vec3.transformMat4(vec3.create(), frame.w, tilting);
      const moment = vec3.create();
      for (const [mass, height, off] of middles) {
        const at = vec3.scale(vec3.create(), frame.w, height);
        const beside = vec3.transformMat4(vec3.create(), vec3.scale(vec3.create(), frame.u, off), turning);
        vec3.transformMat4(at, vec3.add(at, at, beside), tilting);
        const weight = vec3.scale(vec3.create(), frame.down, (mass * G) / 1000);
        vec3.add(moment, moment, vec3.cross(vec3.create(), at, weight));
      }
      most = {
        tilt: Math.max(most.tilt, Math.abs(vec3.dot(moment, frame.u))),
        rotary: Math.max(most.rotary, Math.abs(vec3.dot(moment, axis))),
      };
    }
  return most;
}

const upTo = (tilt: number): readonly number[] => Array.from({ length: tilt + 1 }, (_, at) => at);

function caseOf(work: Work, frame: keyof typeof FRAMES): Case {
  const given = {
    part: {
      size: [60, 60, work.height],
      mass: work.mass,
      approaches: [work.tilt > 90 ? { undercut: work.tilt } : { slant: work.tilt }],
      eccentricity: work.eccentricity,
      holding: { height: work.fixtureHeight, mass: work.fixtureMass },
    },
    machine: {
      spindle: frame === 'an upright tool' ? 'vertical' : 'horizontal',
      builtIn: {
        faceOffset: work.faceOffset,
        tiltAxis: frame === 'a level tool, its tilt axis upright' ? 'along-y' : 'along-x',
      },
    },
  } as const;
  const [only] = exampleWorld(given).cases;
  if (only === undefined) throw new Error('no case');
  return only;
}

/** What gravity alone asks of the rotary axis: the term of a cut without force. */
function aboutRotary(of: Case): number {
  const [milling] = aboutRotaryAxis(of, part.cutForce, part.brakeSafety);
  if (milling === undefined) throw new Error('no term');
  const { values } = evaluateTerm(milling, of);
  const numbers = Object.fromEntries(Object.entries(values).map(([key, { high }]) => [key, high]));
  return milling.formula({ ...numbers, k: 0 });
}

describe.each(Object.keys(FRAMES) as (keyof typeof FRAMES)[])('under %s', (name) => {
  it('gravity about both axes is never more than it asks for, and comes near to it', () => {
    fc.assert(
      fc.property(works, (work) => {
        const of = caseOf(work, name);
        const asked = { tilt: evaluateSide(gravityAboutTilt, of).high, rotary: aboutRotary(of) };
        const found = sampled(work, FRAMES[name], upTo(work.tilt));
        for (const axis of ['tilt', 'rotary'] as const) {
          expect(found[axis]).toBeLessThanOrEqual(asked[axis] + 1e-9);
          // steps of 1° of tilt and 5° of turn miss the worst by little
          expect(found[axis]).toBeGreaterThanOrEqual(asked[axis] * 0.999 - 1e-9);
        }
      }),
      { numRuns: 60, seed: 20_260_105 },
    );
  });
});

describe('a single axis', () => {
  const barrel: Work = {
    ...{ mass: 10, fixtureMass: 4, faceOffset: 230, fixtureHeight: 50, height: 80 },
    ...{ eccentricity: 20, tilt: 0 },
  };
  const stood = (spindle: 'vertical' | 'horizontal'): Case => {
    const given = {
      part: { mass: 10, eccentricity: 20, approaches: ['around'] },
      rotary: { class: 'single-axis' },
      machine: { spindle },
    } as const;
    const [only] = exampleWorld(given).cases;
    if (only === undefined) throw new Error('no case');
    return only;
  };

  it('level under an upright tool holds the whole eccentric weight', () => {
    const level: Frame = { u: [0, 1, 0], w: [1, 0, 0], down: [0, 0, -1] };
    const found = sampled(barrel, level, [0]).rotary;
    expectClose(found, (10 * G * 20) / 1000, { percent: 1e-9 });
    expectClose(aboutRotary(stood('vertical')), found, { percent: 1e-9 });
  });

  it('upright under a level tool holds nothing', () => {
    const upright: Frame = { u: [1, 0, 0], w: [0, 1, 0], down: [0, -1, 0] };
    expectClose(sampled(barrel, upright, [0]).rotary, 0, { absolute: 1e-12 });
    expect(aboutRotary(stood('horizontal'))).toBe(0);
  });
});

describe('a mass that nobody knows, under a level tool', () => {
  it('asks for no less than the least and no more than the greatest over its range', () => {
    fc.assert(
      fc.property(works, fc.double({ min: 1.01, max: 30, noNaN: true }), (work, wider) => {
        const of = caseOf(work, 'a level tool, its tilt axis level');
        const known = (mass: number) =>
          evaluateSide(gravityAboutTilt, caseOf({ ...work, mass }, 'a level tool, its tilt axis level'));
        const [low, high] = [work.mass, work.mass * wider];
        const value = { low, high, gaps: [], forSeller: false, forOthers: true };
        if (of.part === null) throw new Error('no part');
        const unknown: Case = {
          ...of,
          keys: { ...of.keys, part: Number.NaN },
          part: { ...of.part, mass: { ...of.part.mass, ...value } },
        };
        const range = evaluateSide(gravityAboutTilt, unknown);
        for (let step = 0; step <= 40; step += 1) {
          const { low: least, high: greatest } = known(low + ((high - low) * step) / 40);
          expect(least).toBeGreaterThanOrEqual(range.low - 1e-9);
          expect(greatest).toBeLessThanOrEqual(range.high + 1e-9);
        }
      }),
      { numRuns: 60, seed: 20_260_106 },
    );
  });
});

/** A printed rod (see test/published/physcasts-hinged-rod.test.ts), held out level along a level tool. */
describe('a rod of 1.5 m and 0.80 kg, hinged at one end', () => {
  const rod: Work = {
    ...{ mass: 0.8, fixtureMass: 0, faceOffset: 0, fixtureHeight: 0, height: 1500 },
    ...{ eccentricity: 0, tilt: 60 },
  };
  it.each([
    ['an upright tool', 0.8660254 * 5.884],
    ['a level tool, its tilt axis level', 5.884],
    ['a level tool, its tilt axis upright', 0],
  ] as const)('under %s pulls with %f N·m as it tilts to 60°', (frame, moment) => {
    expectClose(evaluateSide(gravityAboutTilt, caseOf(rod, frame)).high, moment, { percent: 0.01 });
  });
});

it('a table of which nobody says how its tilt axis lies may be held by either', () => {
  const given = {
    machine: { spindle: 'horizontal', builtIn: { tiltAxis: 'unknown', leans: 'unknown' } },
  } as const;
  const [of] = exampleWorld(given).cases;
  if (of === undefined) throw new Error('no case');
  const ways = oriented(of);
  expect(ways.map(({ rotary }) => rotary.gravity)).toEqual(['across', 'across', 'along', 'along']);
  expect(new Set(ways.map(({ keys }) => keys.rotary)).size).toBe(2);
});
