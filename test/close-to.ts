import { expect } from 'vitest';

/** How far off a value may be: a share of the expected value, or an amount in its own unit. */
export type Tolerance = { readonly percent: number } | { readonly absolute: number };

/** Fails unless `actual` is within the tolerance of `expected`; the message says by how much it is off. */
export function expectClose(actual: number, expected: number, tolerance: Tolerance): void {
  const allowed =
    'percent' in tolerance ? (Math.abs(expected) * tolerance.percent) / 100 : tolerance.absolute;
  const off = Math.abs(actual - expected);
  expect(
    actual === expected || off <= allowed,
    `${actual} is off ${expected} by ${off}, more than ${allowed}`,
  ).toBe(true);
}
