import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockPlanRadius } from '../../src/mechanics/geometry/block-plan-radius.ts';
import { distanceFromAxis } from '../../src/mechanics/geometry/distance.ts';
import { profilePoints } from '../../src/mechanics/geometry/profile.ts';
import { heightAt, reachAt } from '../../src/mechanics/geometry/rotate.ts';
import { simultaneousBox } from '../../src/mechanics/geometry/simultaneous-box.ts';
import { cosine, sine } from '../../src/mechanics/geometry/sine-and-cosine.ts';
import { slantBox } from '../../src/mechanics/geometry/slant-box.ts';
import {
  greatestHeight,
  greatestReach,
  leastHeight,
  leastReach,
} from '../../src/mechanics/geometry/swept-extremes.ts';
import { topBox } from '../../src/mechanics/geometry/top-box.ts';
import { undercutBox } from '../../src/mechanics/geometry/undercut-box.ts';
import { unionBox } from '../../src/mechanics/geometry/union-box.ts';
import { expectClose } from '../close-to.ts';

const runs = { seed: 7, numRuns: 300 };
const place = fc.double({ min: -500, max: 500, noNaN: true });
const angle = fc.double({ min: -180, max: 180, noNaN: true });
const ROUNDING = { absolute: 1e-9 };
const work = { radius: 80, eccentricity: 5, bottom: -30, top: 120, toolMargin: 10, depthTop: 20 };

describe('sine and cosine', () => {
  it('are exact at every quarter turn', () => {
    expect([-270, -180, -90, 0, 90, 180, 270, 360, 450].map(sine)).toEqual([1, 0, -1, 0, 1, 0, -1, 0, 1]);
    expect([-270, -180, -90, 0, 90, 180, 270, 360, 450].map(cosine)).toEqual([0, -1, 0, 1, 0, -1, 0, 1, 0]);
  });

  it('agree with the sine of radians everywhere', () => {
    fc.assert(
      fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (tilt) => {
        expectClose(sine(tilt), Math.sin((tilt * Math.PI) / 180), ROUNDING);
        expectClose(cosine(tilt), Math.cos((tilt * Math.PI) / 180), ROUNDING);
      }),
      runs,
    );
  });
});

describe('a tilted point', () => {
  it('keeps its place at 0, lies down at 90 and hangs at 180, exactly', () => {
    expect([heightAt(30, 40, 0), reachAt(30, 40, 0)]).toEqual([40, 30]);
    expect([heightAt(30, 40, 90), reachAt(30, 40, 90)]).toEqual([30, -40]);
    expect([heightAt(30, 40, 180), reachAt(30, 40, 180)]).toEqual([-40, -30]);
  });

  it('keeps its distance from the axis', () => {
    fc.assert(
      fc.property(place, place, angle, (v, w, tilt) => {
        expectClose(distanceFromAxis(reachAt(v, w, tilt), heightAt(v, w, tilt)), Math.hypot(v, w), ROUNDING);
      }),
      runs,
    );
  });

  it('comes back when tilted back', () => {
    fc.assert(
      fc.property(place, place, angle, (v, w, tilt) => {
        const [reach, height] = [reachAt(v, w, tilt), heightAt(v, w, tilt)];
        expectClose(reachAt(reach, height, -tilt), v, ROUNDING);
        expectClose(heightAt(reach, height, -tilt), w, ROUNDING);
      }),
      runs,
    );
  });

  it('stays where it is known, though the direction that does not count is without bound', () => {
    expect(heightAt(Number.POSITIVE_INFINITY, 40, 0)).toBe(40);
    expect(heightAt(30, Number.POSITIVE_INFINITY, 90)).toBe(30);
    expect(reachAt(30, Number.NEGATIVE_INFINITY, 180)).toBe(-30);
    expect(heightAt(Number.POSITIVE_INFINITY, 40, 30)).toBe(Number.POSITIVE_INFINITY);
    expect(heightAt(Number.NaN, 40, 30)).toBeNaN();
  });
});

describe('swept extremes', () => {
  it('hold every tilt on the way, and are taken on at one of them', () => {
    fc.assert(
      fc.property(place, place, angle, angle, (v, w, one, other) => {
        const [from, to] = one < other ? [one, other] : [other, one];
        const tilts = Array.from({ length: 721 }, (_, index) => from + ((to - from) * index) / 720);
        const heights = tilts.map((tilt) => heightAt(v, w, tilt));
        const reaches = tilts.map((tilt) => reachAt(v, w, tilt));
        // between two tilts of the grid an extreme hides at most this much
        const hidden = Math.hypot(v, w) * (1 - Math.cos(((to - from) * Math.PI) / 720 / 360)) + 1e-9;
        const pairs = [
          [greatestHeight(v, w, from, to), Math.max(...heights)],
          [0 - leastHeight(v, w, from, to), 0 - Math.min(...heights)],
          [greatestReach(v, w, from, to), Math.max(...reaches)],
          [0 - leastReach(v, w, from, to), 0 - Math.min(...reaches)],
        ] as const;
        for (const [extreme, sampled] of pairs) {
          expect(extreme).toBeGreaterThanOrEqual(sampled - 1e-9);
          expect(extreme).toBeLessThanOrEqual(sampled + hidden);
        }
      }),
      runs,
    );
  });

  it('of a single tilt are the place at that tilt', () => {
    expect(greatestHeight(30, 40, 25, 25)).toBe(heightAt(30, 40, 25));
    expect(leastReach(30, 40, 25, 25)).toBe(reachAt(30, 40, 25));
  });

  it('do not jump where the highest point comes into the range', () => {
    const peak = (Math.atan2(30, 40) * 180) / Math.PI;
    const [before, after] = [-1e-6, 1e-6].map((step) => greatestHeight(30, 40, 0, peak + step));
    expectClose(before ?? Number.NaN, 50, ROUNDING);
    expectClose(after ?? Number.NaN, 50, ROUNDING);
  });

  it('see the peak that lies a whole turn further', () => {
    expectClose(greatestHeight(0, 10, 350, 370), 10, ROUNDING);
    expectClose(leastHeight(0, 10, -190, -170), -10, ROUNDING);
  });

  it('refuse a range that runs backward', () => {
    expect(() => greatestHeight(1, 1, 90, 0)).toThrow(RangeError);
    expect(() => leastReach(1, 1, 90, 0)).toThrow(RangeError);
  });
});

describe('tip boxes where one formula takes over from another', () => {
  it('a slant of 0° is the top, the wall under it included', () => {
    const slant = slantBox(work, 0);
    const top = topBox({ ...work, depthTop: work.top - work.bottom });
    expect(slant).toEqual(top);
  });

  it('at 90° an undercut is a slant without the top disc', () => {
    const [slant, undercut] = [slantBox(work, 90), undercutBox(work, 90)];
    expect(undercut.u).toEqual(slant.u);
    expect(undercut.v).toEqual(slant.v);
    expect(undercut.w).toEqual([-work.eccentricity, work.radius]);
    expect(slant.w).toEqual([-work.radius, work.radius]);
  });

  it('boxes do not jump just before and after 90°', () => {
    const near = { absolute: 1e-4 };
    for (const [box, tilt] of [
      [slantBox, 90 - 1e-5],
      [undercutBox, 90 + 1e-5],
    ] as const) {
      const [there, here] = [box(work, 90), box(work, tilt)];
      for (const axis of ['u', 'v', 'w'] as const) {
        expectClose(here[axis][0], there[axis][0], near);
        expectClose(here[axis][1], there[axis][1], near);
      }
    }
    const [below, above] = [simultaneousBox(work, 90 - 1e-5), simultaneousBox(work, 90 + 1e-5)];
    for (const axis of ['u', 'v', 'w'] as const) {
      expectClose(below[axis][0], above[axis][0], near);
      expectClose(below[axis][1], above[axis][1], near);
    }
  });

  it('the simultaneous box grows with the tilt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 180, noNaN: true }),
        fc.double({ min: 0, max: 180, noNaN: true }),
        (a, b) => {
          const [small, large] = [
            simultaneousBox(work, Math.min(a, b)),
            simultaneousBox(work, Math.max(a, b)),
          ];
          expect(unionBox([small, large])).toEqual(large);
        },
      ),
      runs,
    );
  });

  it('take what is without bound as it is', () => {
    const box = topBox({ ...work, radius: Number.POSITIVE_INFINITY });
    expect(box.u).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
    expect(box.w).toEqual([100, 120]);
    expect(slantBox({ ...work, top: Number.POSITIVE_INFINITY }, 30).w[1]).toBe(Number.POSITIVE_INFINITY);
    expect(topBox({ ...work, depthTop: Number.NaN }).w[0]).toBeNaN();
  });
});

describe('out of range', () => {
  it.each([
    ['a slant beyond level', () => slantBox(work, 91)],
    ['an undercut that is none', () => undercutBox(work, 89)],
    ['a tilt past half a turn', () => simultaneousBox(work, 181)],
    ['a negative radius', () => topBox({ ...work, radius: -1 })],
    ['a radius without its eccentricity', () => slantBox({ ...work, radius: 4 }, 30)],
    ['a top below the bottom', () => slantBox({ ...work, top: -31 }, 30)],
    ['no boxes', () => unionBox([])],
    ['a negative side', () => blockPlanRadius(-1, 2)],
    ['a profile upside down', () => profilePoints({ ...work, top: -31, fixtureRadius: 0, faceHeight: 0 })],
    ['a negative fixture', () => profilePoints({ ...work, fixtureRadius: -1, faceHeight: 0 })],
  ])('%s is refused', (_what, call) => {
    expect(call).toThrow(RangeError);
  });
});

describe('the profile of the work', () => {
  const sizes = { radius: 60, bottom: 70, top: 150, fixtureRadius: 50, faceHeight: 40 };

  it('goes from the top of the part to the foot of the fixture', () => {
    expect(profilePoints(sizes).map(({ v, w }) => [v, w])).toEqual([
      [60, 150],
      [60, 70],
      [50, 70],
      [50, 40],
    ]);
  });

  it('has the edge of the faceplate where it is asked for', () => {
    expect(profilePoints(sizes, 100).at(-1)).toEqual({ name: 'faceplate', v: 100, w: 40 });
  });
});
