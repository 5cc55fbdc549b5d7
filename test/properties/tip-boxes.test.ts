import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aroundBox } from '../../src/mechanics/geometry/around-box.ts';
import { blockPlanRadius } from '../../src/mechanics/geometry/block-plan-radius.ts';
import { sideBox } from '../../src/mechanics/geometry/side-box.ts';
import { simultaneousBox } from '../../src/mechanics/geometry/simultaneous-box.ts';
import { slantBox } from '../../src/mechanics/geometry/slant-box.ts';
import { topBox } from '../../src/mechanics/geometry/top-box.ts';
import { undercutBox } from '../../src/mechanics/geometry/undercut-box.ts';
import { unionBox } from '../../src/mechanics/geometry/union-box.ts';
import { besides, expectTight } from './box-holds.ts';
import { cylinderSurface, faceSurface, type Place, seen } from './visible-surface.ts';

const runs = { seed: 20_260_101, numRuns: 150 };
const length = (max: number): fc.Arbitrary<number> => fc.double({ min: 1, max, noNaN: true });
const turns = (step: number): number[] => Array.from({ length: 360 / step }, (_, index) => index * step);

/** A block or a round part on its fixture on a faceplate, that may be sunk below the tilt axis. */
const parts = fc
  .record({
    a: length(400),
    b: length(400),
    height: length(300),
    isRound: fc.boolean(),
    faceHeight: fc.double({ min: -150, max: 150, noNaN: true }),
    fixture: fc.double({ min: 0, max: 120, noNaN: true }),
    eccentricity: fc.oneof(fc.constant(0), length(40)),
    margin: fc.oneof(fc.constant(0), length(40)),
    depth: fc.oneof(fc.constant(0), length(60)),
  })
  .map(({ a, b, height, isRound, faceHeight, fixture, eccentricity, margin, depth }) => {
    const planRadius = isRound ? a / 2 : blockPlanRadius(a, b);
    const faces = isRound
      ? [{ faceOffset: planRadius, faceWidth: 2 * planRadius }]
      : [
          { faceOffset: a / 2, faceWidth: b },
          { faceOffset: b / 2, faceWidth: a },
        ];
    const bottom = faceHeight + fixture;
    const cylinder = {
      planRadius,
      eccentricity,
      bottom,
      top: bottom + height,
    };
    const work = {
      radius: planRadius + eccentricity,
      eccentricity,
      bottom,
      top: bottom + height,
      toolMargin: margin,
      depthTop: depth,
      depthSide: depth,
    };
    return {
      isRound,
      faces,
      cylinder,
      work,
      level: { bottom: fixture, top: fixture + height },
    };
  });
const slants = fc.oneof(fc.constantFrom(0, 45, 90), fc.double({ min: 0, max: 90, noNaN: true }));
const undercuts = fc.oneof(fc.constantFrom(90, 135), fc.double({ min: 90, max: 179, noNaN: true }));

const deepened = (places: readonly Place[], depth: number): readonly Place[] => [
  ...places,
  ...places.map(([u, v, w]): Place => [u, v, w - depth]),
];
/** Every turn of the rotary axis; a point's own direction and the turn add up to each quarter turn. */
const seenAtAnyTurn = (surface: Parameters<typeof seen>[0], tilt: number): Place[] =>
  turns(30).flatMap((turn) => [...seen(surface, turn, tilt)]);

describe('tip boxes hold all that the tool sees and touch it on every face', () => {
  it('top: the top disc, and pockets down from it', () => {
    fc.assert(
      fc.property(parts, ({ cylinder, work }) => {
        const disc = cylinderSurface(cylinder, 12).filter(({ normal }) => normal[2] === 1);
        const places = seenAtAnyTurn(disc, 0);
        expectTight(topBox({ ...work, toolMargin: 0, depthTop: 0 }), places);
        expectTight(topBox(work), deepened(besides(places, work.toolMargin), work.depthTop));
      }),
      runs,
    );
  });

  it('slant: the top disc and the half wall that faces the tool', () => {
    fc.assert(
      fc.property(parts, slants, ({ cylinder, work }, tilt) => {
        const places = seenAtAnyTurn(cylinderSurface(cylinder, 12), tilt);
        expectTight(slantBox({ ...work, toolMargin: 0 }, tilt), places);
        expectTight(slantBox(work, tilt), besides(places, work.toolMargin));
      }),
      runs,
    );
  });

  it('undercut: the half wall that faces the tool', () => {
    fc.assert(
      fc.property(parts, undercuts, ({ cylinder, work }, tilt) => {
        const wall = cylinderSurface(cylinder, 12).filter(({ normal }) => normal[2] === 0);
        const places = seenAtAnyTurn(wall, tilt);
        expectTight(undercutBox({ ...work, toolMargin: 0 }, tilt), places);
        expectTight(undercutBox(work, tilt), besides(places, work.toolMargin));
      }),
      runs,
    );
  });

  it('beyond 90° nothing is seen of the top disc, so that an undercut is the whole of it', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 90.001, max: 179, noNaN: true }), ({ cylinder }, tilt) => {
        const disc = cylinderSurface(cylinder, 8).filter(({ normal }) => normal[2] === 1);
        expect(seen(disc, 30, tilt)).toEqual([]);
      }),
      runs,
    );
  });

  it('side: each face turned square to the tool, the part’s axis standing in any direction', () => {
    fc.assert(
      fc.property(parts, ({ faces, work }) => {
        for (const face of faces) {
          const places = turns(30).flatMap((direction) => {
            const angle = (direction * Math.PI) / 180;
            const axis = [work.eccentricity * Math.cos(angle), work.eccentricity * Math.sin(angle)] as const;
            const of = {
              offset: face.faceOffset,
              width: face.faceWidth,
              bottom: work.bottom,
              top: work.top,
            };
            return [...seen(faceSurface(of, axis), 0, 90)];
          });
          expectTight(sideBox({ ...work, ...face, toolMargin: 0, depthSide: 0 }), places);
          // below the part stands the fixture: the tool goes past the other edges only
          const free = besides(places, work.toolMargin).filter(([, v]) => v <= -work.bottom + 1e-9);
          expectTight(sideBox({ ...work, ...face }), deepened([...places, ...free], work.depthSide));
        }
      }),
      runs,
    );
  });

  it('simultaneous: all of it, at every tilt from level to the greatest', () => {
    const tilts = fc.oneof(fc.constantFrom(0, 30, 90, 110), fc.double({ min: 0, max: 180, noNaN: true }));
    fc.assert(
      fc.property(parts, tilts, ({ cylinder, work }, tilt) => {
        const places = tiltsThatMatter(work, tilt).flatMap((each) =>
          turns(90).flatMap((turn) => [...seen(cylinderSurface(cylinder, 4), turn, each)]),
        );
        expectTight(simultaneousBox({ ...work, toolMargin: 0 }, tilt), places);
        expectTight(simultaneousBox(work, tilt), besides(places, work.toolMargin));
      }),
      runs,
    );
  });

  it('around: what is worked on is turned up to the tool, which may cross the whole width of the work', () => {
    fc.assert(
      fc.property(parts, ({ faces, cylinder, work, level }) => {
        const [along, flats] = aroundPlaces({ ...cylinder, ...level }, faces, work.eccentricity);
        const nearest = faces.map((face) => face.faceOffset).reduce((a, b) => Math.min(a, b));
        const of = { ...work, ...level, faceOffset: nearest };
        // of the half wall, the tool works on what lies above the lowest face turned up
        const box = aroundBox({ ...of, toolMargin: 0, depthSide: 0 });
        const above = along.map(([u, v, w]): Place => [u, v, Math.max(w, box.w[0])]);
        expectTight(box, [...above, ...flats]);
        const free = besides([...above, ...flats], work.toolMargin).filter(([u]) => u >= level.bottom - 1e-9);
        const deep = flats.map(([u, v, w]): Place => [u, v, w - work.depthSide]);
        expectTight(aroundBox(of), [...free, ...deep]);
      }),
      runs,
    );
  });
});

/** A grid of tilts, and those at which some corner is at its highest, lowest or farthest. */
function tiltsThatMatter(
  {
    radius,
    eccentricity,
    bottom,
    top,
  }: { radius: number; eccentricity: number; bottom: number; top: number },
  greatest: number,
): number[] {
  const grid = Array.from({ length: 13 }, (_, index) => (greatest * index) / 12);
  const level = greatest >= 90 ? [90] : [];
  const corners = [-radius, -eccentricity, radius].flatMap((v) => [bottom, top].map((w) => [v, w] as const));
  const peaks = corners
    .map(([v, w]) => (Math.atan2(v, w) * 180) / Math.PI)
    .flatMap((peak) => [-270, -180, -90, 0, 90, 180, 270].map((turn) => peak + turn))
    .filter((tilt) => tilt > 0 && tilt < greatest);
  return [...grid, ...level, ...peaks];
}

/**
 * Places around a level rotary axis, here as [along it, across, up]: the half wall that faces the tool at any
 * turn, and the faces turned square to it.
 */
function aroundPlaces(
  cylinder: Parameters<typeof cylinderSurface>[0],
  faces: readonly { faceOffset: number; faceWidth: number }[],
  eccentricity: number,
): readonly [half: readonly Place[], flats: readonly Place[]] {
  // tilt 90 lays the standing work down; seen from there the axis runs along −v
  const lay = ([u, v, w]: Place): Place => [-v, u, w];
  const wall = cylinderSurface(cylinder, 12).filter(({ normal }) => normal[2] === 0);
  const half = seenAtAnyTurn(wall, 90).map(lay);
  const flats = faces.flatMap(({ faceOffset, faceWidth }) =>
    turns(90).flatMap((direction) => {
      const angle = (direction * Math.PI) / 180;
      const axis = [eccentricity * Math.cos(angle), eccentricity * Math.sin(angle)] as const;
      const of = {
        offset: faceOffset,
        width: faceWidth,
        bottom: cylinder.bottom,
        top: cylinder.top,
      };
      return seen(faceSurface(of, axis), 0, 90).map(lay);
    }),
  );
  return [half, flats];
}

describe('union of boxes', () => {
  const spans = fc
    .tuple(fc.double({ min: -500, max: 500, noNaN: true }), fc.double({ min: 0, max: 300, noNaN: true }))
    .map(([low, size]) => [low, low + size] as const);
  const boxes = fc.record({ u: spans, v: spans, w: spans });

  it('holds each of them and nothing that none needs', () => {
    fc.assert(
      fc.property(fc.array(boxes, { minLength: 1, maxLength: 6 }), (list) => {
        const corners = list.flatMap((box): Place[] => [
          [box.u[0], box.v[0], box.w[0]],
          [box.u[1], box.v[1], box.w[1]],
        ]);
        expectTight(unionBox(list), corners);
      }),
      runs,
    );
  });
});
