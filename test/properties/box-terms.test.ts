import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aroundBox } from '../../src/mechanics/geometry/around-box.ts';
import { profilePoints } from '../../src/mechanics/geometry/profile.ts';
import { sideBox } from '../../src/mechanics/geometry/side-box.ts';
import { simultaneousBox } from '../../src/mechanics/geometry/simultaneous-box.ts';
import { slantBox } from '../../src/mechanics/geometry/slant-box.ts';
import type { TipBox } from '../../src/mechanics/geometry/tip-box.ts';
import { topBox } from '../../src/mechanics/geometry/top-box.ts';
import { undercutBox } from '../../src/mechanics/geometry/undercut-box.ts';
import type { Part } from '../../src/questions/answers.ts';
import type { Case } from '../../src/rules/judging/case.ts';
import { evaluateTerm, folded } from '../../src/rules/judging/side.ts';
import type { Term } from '../../src/rules/judging/term.ts';
import { boxesOf } from '../../src/rules/sides/boxes/index.ts';
import { wholeProfile } from '../../src/rules/sides/profile-points.ts';
import { expectClose } from '../close-to.ts';
import { exampleWorld } from '../rules/example-shop.ts';
import { anyPart, anyRotary } from './random-shop.ts';

/**
 * The boxes that the checks read are terms, so that unknown answers have directions. Those proved against the
 * surface that the tool sees stand in mechanics. Here the two are the same.
 */

const shop = fc.record({
  part: anyPart,
  rotary: anyRotary,
  largestCutter: fc.double({ min: 2, max: 60, noNaN: true }),
});
const RUNS = { numRuns: 200, seed: 20260108 };

function firstCase(part: Part, rotary: object, largestCutter: number): Case {
  const [first] = exampleWorld({ part, rotary, tools: { largestCutter } } as never).cases;
  if (first?.part == null) throw new Error('no case');
  return first;
}

/** What the part is as the boxes of mechanics see it. */
function workOf({ part, rotary, shop: { largestCutter } }: Case) {
  if (part === null) throw new Error('no part');
  const radius = part.planRadius.low + part.eccentricity.low;
  const bottom = rotary.axes === 1 ? part.fixtureHeight.low : rotary.faceOffset.low + part.fixtureHeight.low;
  return {
    radius,
    eccentricity: part.eccentricity.low,
    bottom,
    top: bottom + part.height.low,
    toolMargin: largestCutter.low / 2,
    depthTop: part.depthTop.low,
    depthSide: part.depthSide.low,
    halves: [part.length.low / 2, part.width.low / 2] as const,
    widths: [part.width.low, part.length.low] as const,
  };
}

const span = (of: Case, low: readonly Term[], high: readonly Term[]): readonly [number, number] => [
  folded(
    'least',
    low.map((each) => evaluateTerm(each, of)),
  ).low,
  folded(
    'greatest',
    high.map((each) => evaluateTerm(each, of)),
  ).high,
];

function expectSame(of: Case, name: string, expected: TipBox): void {
  const boxes = boxesOf(of).filter((box) => box.name === name || box.name.startsWith(name));
  expect(boxes.length).toBeGreaterThan(0);
  const ends = (low: 'uLow' | 'vLow' | 'wLow', high: 'uHigh' | 'vHigh' | 'wHigh') =>
    span(
      of,
      boxes.flatMap((box) => box[low]),
      boxes.flatMap((box) => box[high]),
    );
  const found = { u: ends('uLow', 'uHigh'), v: ends('vLow', 'vHigh'), w: ends('wLow', 'wHigh') };
  for (const axis of ['u', 'v', 'w'] as const)
    for (const end of [0, 1] as const) expectClose(found[axis][end], expected[axis][end], { absolute: 1e-9 });
}

const around = (boxes: readonly TipBox[]): TipBox => {
  const over = (axis: 'u' | 'v' | 'w') =>
    [Math.min(...boxes.map((box) => box[axis][0])), Math.max(...boxes.map((box) => box[axis][1]))] as const;
  return { u: over('u'), v: over('v'), w: over('w') };
};

const two = { class: 'trunnion' } as const;

describe('the boxes of the checks are the boxes of mechanics', () => {
  test('top, slant and undercut', () => {
    fc.assert(
      fc.property(
        shop,
        fc.double({ min: 1, max: 89, noNaN: true }),
        ({ part, rotary, largestCutter }, angle) => {
          const of = firstCase(
            {
              ...part,
              motion: 'positional',
              approaches: ['top', { slant: angle }, { undercut: 180 - angle }],
            },
            { ...rotary, ...two },
            largestCutter,
          );
          const work = workOf(of);
          expectSame(of, 'top', topBox(work));
          expectSame(of, 'slant', slantBox(work, angle));
          expectSame(of, 'undercut', undercutBox(work, 180 - angle));
        },
      ),
      RUNS,
    );
  });

  test('the side faces', () => {
    fc.assert(
      fc.property(shop, ({ part, rotary, largestCutter }) => {
        const sides: Part = { ...part, motion: 'positional', approaches: ['sides'] };
        const of = firstCase(sides, { ...rotary, ...two }, largestCutter);
        const work = workOf(of);
        const faces = work.halves.map((faceOffset, index) =>
          sideBox({ ...work, faceOffset, faceWidth: work.widths[index] ?? 0 }),
        );
        expectSame(of, 'side', around(faces));
      }),
      RUNS,
    );
  });

  test('simultaneous, up to level and beyond', () => {
    fc.assert(
      fc.property(
        shop,
        fc.double({ min: 1, max: 135, noNaN: true }),
        ({ part, rotary, largestCutter }, greatest) => {
          if (Math.abs(greatest - 90) < 0.5) return;
          const approach = greatest < 90 ? { slant: greatest } : { undercut: greatest };
          const moving: Part = { ...part, motion: 'simultaneous', approaches: [approach] };
          const of = firstCase(moving, { ...rotary, ...two }, largestCutter);
          expectSame(of, 'simultaneous', simultaneousBox(workOf(of), greatest));
        },
      ),
      RUNS,
    );
  });

  test('around a level axis', () => {
    fc.assert(
      fc.property(shop, ({ part, rotary, largestCutter }) => {
        const turned: Part = { ...part, motion: 'positional', approaches: ['around'] };
        const of = firstCase(turned, { ...rotary, class: 'single-axis' }, largestCutter);
        const work = workOf(of);
        expectSame(of, 'around', around(work.halves.map((faceOffset) => aroundBox({ ...work, faceOffset }))));
      }),
      RUNS,
    );
  });

  test('and so is the profile', () => {
    fc.assert(
      fc.property(shop, ({ part, rotary, largestCutter }) => {
        const of = firstCase(
          { ...part, approaches: ['sides'] },
          { ...rotary, ...two, faceplate: 200 },
          largestCutter,
        );
        const work = workOf(of);
        const fixtureRadius = (of.part?.fixtureDiameter.low ?? 0) / 2;
        const faceHeight = of.rotary.faceOffset.low;
        const expected = profilePoints({ ...work, fixtureRadius, faceHeight }, 100);
        const found = wholeProfile(of).map(({ v, w }) => {
          const values = (uses: typeof v.rises) =>
            Object.fromEntries(Object.entries(uses).map(([key, { input }]) => [key, input.read(of).low]));
          return [v.of(values(v.rises)), w.of(values(w.rises))] as const;
        });
        expect(found.length).toBe(expected.length);
        for (const [index, point] of expected.entries()) {
          expectClose(found[index]?.[0] ?? Number.NaN, point.v, { absolute: 1e-9 });
          expectClose(found[index]?.[1] ?? Number.NaN, point.w, { absolute: 1e-9 });
        }
      }),
      RUNS,
    );
  });
});
