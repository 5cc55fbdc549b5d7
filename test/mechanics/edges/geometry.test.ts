import { describe, expect, it } from 'vitest';
import { aroundBox } from '../../../src/mechanics/geometry/around-box.ts';
import { blockPlanRadius } from '../../../src/mechanics/geometry/block-plan-radius.ts';
import { profilePoints } from '../../../src/mechanics/geometry/profile.ts';
import { sideBox } from '../../../src/mechanics/geometry/side-box.ts';
import { simultaneousBox } from '../../../src/mechanics/geometry/simultaneous-box.ts';
import { cosine, sine } from '../../../src/mechanics/geometry/sine-and-cosine.ts';
import { slantBox } from '../../../src/mechanics/geometry/slant-box.ts';
import {
  greatestHeight,
  greatestReach,
  leastHeight,
  leastReach,
} from '../../../src/mechanics/geometry/swept-extremes.ts';
import { needWork } from '../../../src/mechanics/geometry/tip-box.ts';
import { topBox } from '../../../src/mechanics/geometry/top-box.ts';
import { undercutBox } from '../../../src/mechanics/geometry/undercut-box.ts';
import { expectClose } from '../../close-to.ts';
import { BELOW, WITHOUT_BOUND } from './bounds.ts';

const work = { radius: 50, eccentricity: 5, bottom: -20, top: 80, toolMargin: 10 };
const faces = { ...work, depthTop: 20, depthSide: 15, faceOffset: 40, faceWidth: 60 };
const profile = { radius: 60, bottom: 70, top: 150, fixtureRadius: 50, faceHeight: 40 };

describe('on the edge of what can be', () => {
  it.each([
    [
      'work of no size',
      { radius: 0, toolMargin: 0, depthTop: 0, depthSide: 0, faceWidth: 0, eccentricity: 0 },
    ],
    ['work that turns about its edge', { radius: 5, eccentricity: 5 }],
    ['work of no height', { bottom: 10, top: 10 }],
    ['work of which only the bottom is known', { bottom: 10 }],
    ['work of which only the top is known', { top: -10 }],
    ['work of which only the eccentricity is known', { eccentricity: 5 }],
  ])('%s is taken', (_what, sizes) => expect(() => needWork(sizes)).not.toThrow());

  it('tilts end where they say', () => {
    expect(slantBox(work, 0).w[1]).toBe(80);
    expect(slantBox(work, 90).w[1]).toBe(50);
    expect(undercutBox(work, 90).w[1]).toBe(50);
    expect(undercutBox(work, 180).w).toEqual([-80, 20]);
    expect(simultaneousBox(work, 0).w).toEqual(slantBox(work, 0).w);
    expect(simultaneousBox(work, 180).w[0]).toBeLessThanOrEqual(-80);
  });

  it('the profile of nothing at all is where the faceplate is', () => {
    const flat = { radius: 0, bottom: 1, top: 1, fixtureRadius: 0, faceHeight: 1 };
    expect(profilePoints(flat, 0).map(({ v, w }) => [v, w])).toEqual([
      [0, 1],
      [0, 1],
      [0, 1],
      [0, 1],
      [0, 1],
    ]);
  });

  it('a block without sides has no radius', () => {
    expect(blockPlanRadius(0, 0)).toBe(0);
    expect(blockPlanRadius(WITHOUT_BOUND, 0)).toBe(WITHOUT_BOUND);
  });

  it('a point that turns through its highest place reaches it at either end of the range', () => {
    expect(greatestHeight(3, 4, -90, 0)).toBeCloseTo(4, 12);
    expect(greatestHeight(3, 4, 0, (Math.atan2(3, 4) * 180) / Math.PI)).toBeCloseTo(5, 12);
    expect(greatestReach(3, 4, 0, 90)).toBeCloseTo(3, 12);
    expect(leastReach(3, 4, 0, 90)).toBeCloseTo(-4, 12);
    expect(leastHeight(3, 4, 0, 180)).toBeCloseTo(-4, 12);
    expect(greatestReach(0, 0, 0, 0)).toBe(0);
  });

  it('an angle that is no number has neither sine nor cosine', () => {
    expect(sine(WITHOUT_BOUND)).toBeNaN();
    expect(cosine(WITHOUT_BOUND)).toBeNaN();
  });

  it.each([89.999999, 90.000001, 1e-7, 44.5])('%f° is no quarter turn', (angle) => {
    expectClose(sine(angle), Math.sin((angle * Math.PI) / 180), { percent: 1e-5 });
    expectClose(cosine(angle), Math.cos((angle * Math.PI) / 180), { percent: 1e-5 });
  });
});

describe('what each box makes of its sizes', () => {
  it('around: the nearer face goes in, the farther one or the corner comes out', () => {
    expect(aroundBox({ ...faces, radius: 30, eccentricity: 5 }).w).toEqual([20, 45]);
    expect(aroundBox({ ...faces, radius: 60 }).w).toEqual([20, 60]);
    expect(aroundBox(faces).u).toEqual([-20, 90]);
    expect(aroundBox(faces).v).toEqual([-60, 60]);
  });

  it('side: half the face with what it may be off center and half the cutter', () => {
    expect(sideBox(faces)).toEqual({ u: [-45, 45], v: [-90, 20], w: [20, 45] });
  });

  it('top: the radius and half the cutter all round', () => {
    expect(topBox(faces)).toEqual({ u: [-60, 60], v: [-60, 60], w: [60, 80] });
  });
});

describe('one number beyond it', () => {
  const sizes = ['radius', 'toolMargin', 'depthTop', 'depthSide', 'faceWidth', 'eccentricity'] as const;

  it.each(sizes)('%s is refused', (size) => {
    expect(() => needWork({ [size]: BELOW })).toThrow(RangeError);
    expect(() => needWork({ [size]: BELOW })).toThrow(size);
  });

  it.each([
    ['a radius less than its eccentricity', () => needWork({ radius: 5 + BELOW, eccentricity: 5 })],
    ['a top below the bottom', () => needWork({ bottom: 0, top: BELOW })],
    ['work of a box around', () => aroundBox({ ...faces, toolMargin: BELOW })],
    ['work of a side box', () => sideBox({ ...faces, depthSide: BELOW })],
    ['work of a top box', () => topBox({ ...faces, depthTop: BELOW })],
    ['work of a slant box', () => slantBox({ ...work, toolMargin: BELOW }, 30)],
    ['work of an undercut box', () => undercutBox({ ...work, toolMargin: BELOW }, 120)],
    ['work of a simultaneous box', () => simultaneousBox({ ...work, toolMargin: BELOW }, 120)],
    ['a slant', () => slantBox(work, BELOW)],
    ['a slant past level', () => slantBox(work, 90 - BELOW)],
    ['an undercut before level', () => undercutBox(work, 90 + BELOW)],
    ['an undercut past half a turn', () => undercutBox(work, 180 - BELOW)],
    ['a tilt', () => simultaneousBox(work, BELOW)],
    ['a first side', () => blockPlanRadius(BELOW, 1)],
    ['a second side', () => blockPlanRadius(1, BELOW)],
    ['a radius of the part', () => profilePoints({ ...profile, radius: BELOW })],
    ['a radius of the fixture', () => profilePoints({ ...profile, fixtureRadius: BELOW })],
    ['a radius of the faceplate', () => profilePoints(profile, BELOW)],
    ['a profile upside down', () => profilePoints({ ...profile, top: 70 + BELOW })],
    ['a sweep backward to a height', () => leastHeight(1, 1, 1, 0)],
    ['a sweep backward to a reach', () => greatestReach(1, 1, 1, 0)],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
