/**
 * R. du Preez, "5-axis kinematics", documentation of a general open-source machine controller: tables that
 * tilt about X and turn (A-C), or tilt about Y and turn (B-C). Equations PRINTED, numbers DERIVED from them.
 * In that document the table turns in the sense opposite to ISO 841. Ours: with v, w the point after the
 * rotary axis has turned, heightAt and reachAt are the Z and Y rows of A-C as documented (A positive), and the
 * Z and X rows of B-C in the ISO sense (B positive). Offsets of the axes are taken off first and put back.
 */
import { describe, expect, it } from 'vitest';
import { heightAt, reachAt } from '../../src/mechanics/geometry/rotate.ts';
import { simultaneousBox } from '../../src/mechanics/geometry/simultaneous-box.ts';
import {
  greatestHeight,
  greatestReach,
  leastHeight,
  leastReach,
} from '../../src/mechanics/geometry/swept-extremes.ts';
import { expectClose } from '../close-to.ts';

/** The numbers are given to six decimals. */
const SIX = { absolute: 1e-6 };
const radians = (angle: number): number => (angle * Math.PI) / 180;
type Point = readonly [x: number, y: number, z: number];
const Q: Point = [50, 20, 10];

/** Equation (28), A-C with the offset (0, dy, dz), as documented. */
function acDocumented([x, y, z]: Point, a: number, c: number, dy = 0, dz = 0): Point {
  const [sa, ca, sc, cc] = [
    Math.sin(radians(a)),
    Math.cos(radians(a)),
    Math.sin(radians(c)),
    Math.cos(radians(c)),
  ];
  return [
    cc * x - sc * y,
    sc * ca * x + cc * ca * y - sa * z - ca * dy + sa * dz + dy,
    sc * sa * x + cc * sa * y + ca * z - sa * dy - ca * dz + dz,
  ];
}

/** Equation (39), B-C with the offset (dx, 0, dz), as documented. */
function bcDocumented([x, y, z]: Point, b: number, c: number, dx = 0, dz = 0): Point {
  const [sb, cb, sc, cc] = [
    Math.sin(radians(b)),
    Math.cos(radians(b)),
    Math.sin(radians(c)),
    Math.cos(radians(c)),
  ];
  return [
    cc * cb * x - sc * cb * y + sb * z - cb * dx - sb * dz + dx,
    sc * x + cc * y,
    -cc * sb * x + sc * sb * y + cb * z + sb * dx - cb * dz + dz,
  ];
}

function expectPoint(actual: Point, expected: Point): void {
  actual.forEach((value, axis) => {
    expectClose(value, expected[axis] ?? Number.NaN, SIX);
  });
}

/** What ours gives for the A-C rows: u as it stands after the turn, the rest from v and w. */
function acOurs([x, y, z]: Point, a: number, c: number, dy = 0, dz = 0): Point {
  const [sc, cc] = [Math.sin(radians(c)), Math.cos(radians(c))];
  const v = sc * x + cc * y - dy;
  const w = z - dz;
  return [cc * x - sc * y, reachAt(v, w, a) + dy, heightAt(v, w, a) + dz];
}

/** What ours gives for the B-C rows in the ISO sense (both axes negated). */
function bcOurs([x, y, z]: Point, b: number, c: number, dx = 0, dz = 0): Point {
  const [sc, cc] = [Math.sin(radians(c)), Math.cos(radians(c))];
  const v = cc * x + sc * y - dx;
  const w = z - dz;
  return [reachAt(v, w, b) + dx, -sc * x + cc * y, heightAt(v, w, b) + dz];
}

describe('A-C table, documented sense', () => {
  it.each([
    ['A 30, C 45', 30, 45, 0, 0, [21.213203, 37.86607, 33.408991]],
    ['A 30, C 45, offset (0, 5, -40)', 30, 45, 5, -40, [21.213203, 18.535943, 25.550008]],
    ['A 90, C 0', 90, 0, 0, 0, [50, -10, 20]],
    ['A 0, C 90', 0, 90, 0, 0, [-20, 50, 10]],
  ] as const)('%s', (_name, a, c, dy, dz, expected) => {
    expectPoint(acDocumented(Q, a, c, dy, dz), expected);
    expectPoint(acOurs(Q, a, c, dy, dz), expected);
  });
});

describe('A-C table, ISO sense (A and C negated)', () => {
  it.each([
    ['A 30, C 45', 30, 45, 0, 0, [49.497475, -13.371173, 19.266856]],
    ['A 30, C 45, offset (0, 5, -40)', 30, 45, 5, -40, [49.497475, 7.2987, 16.407872]],
    ['A 90, C 0', 90, 0, 0, 0, [50, 10, -20]],
    ['A 0, C 90', 0, 90, 0, 0, [20, -50, 10]],
  ] as const)('%s', (_name, a, c, dy, dz, expected) => {
    expectPoint(acOurs(Q, -a, -c, dy, dz), expected);
  });
});

describe('B-C table, documented sense (B and C negated)', () => {
  it.each([
    ['B 30, C 45', 30, 45, 0, 0, [23.371173, 49.497475, -1.946348]],
    ['B 30, C 45, offset (5, 0, -40)', 30, 45, 5, -40, [44.041046, 49.497475, -4.805332]],
  ] as const)('%s', (_name, b, c, dx, dz, expected) => {
    expectPoint(bcDocumented(Q, b, c, dx, dz), expected);
    expectPoint(bcOurs(Q, -b, -c, dx, dz), expected);
  });
});

describe('B-C table, ISO sense', () => {
  it.each([
    ['B 30, C 45', 30, 45, 0, 0, [37.86607, -21.213203, 33.408991]],
    ['B 30, C 45, offset (5, 0, -40)', 30, 45, 5, -40, [18.535943, -21.213203, 25.550008]],
    ['B -90, C 0', -90, 0, 0, 0, [10, 20, -50]],
  ] as const)('%s', (_name, b, c, dx, dz, expected) => {
    expectPoint(bcOurs(Q, b, c, dx, dz), expected);
  });
});

describe('tips of a part on an A-C table, tilt and turn swept over the documented equations', () => {
  const part = {
    radius: 60,
    eccentricity: 0,
    bottom: 35,
    top: 115,
    toolMargin: 0,
  };
  const step = 0.5;

  it.each([40, 90, 120])('corners to a tilt of %i° reach the swept extremes', (tilt) => {
    for (const w of [part.bottom, part.top]) {
      const seen: Point[] = [];
      for (let a = 0; a <= tilt; a += step) {
        for (let c = 0; c < 360; c += 5) {
          seen.push(acDocumented([part.radius, 0, w], a, c));
        }
      }
      const both = (extreme: typeof greatestHeight): number[] =>
        [-part.radius, part.radius].map((v) => extreme(v, w, 0, tilt));
      // half a step of tilt beside a peak hides 1 − cos 0.25° of it
      const grid = { absolute: 0.003 };
      const ys = seen.map(([, y]) => y);
      const zs = seen.map(([, , z]) => z);
      expectClose(Math.max(...zs), Math.max(...both(greatestHeight)), grid);
      expectClose(Math.min(...zs), Math.min(...both(leastHeight)), grid);
      expectClose(Math.max(...ys), Math.max(...both(greatestReach)), grid);
      expectClose(Math.min(...ys), Math.min(...both(leastReach)), grid);
    }
  });

  it('every tip on the top disc and on the wall facing the tool lies in the simultaneous box', () => {
    const tilt = 110;
    const box = simultaneousBox(part, tilt);
    for (let a = 0; a <= tilt; a += step) {
      for (let c = 0; c < 360; c += 5) {
        const facing = Math.cos(radians(c)) * Math.sin(radians(a)) >= 0;
        for (const w of facing ? [part.bottom, part.top] : []) {
          const [x, y, z] = acDocumented([0, part.radius, w], a, c);
          expect(x >= box.u[0] - 1e-9 && x <= box.u[1] + 1e-9).toBe(true);
          expect(y >= box.v[0] - 1e-9 && y <= box.v[1] + 1e-9).toBe(true);
          expect(z >= box.w[0] - 1e-9 && z <= box.w[1] + 1e-9).toBe(true);
        }
      }
    }
  });
});
