/**
 * The arc second: 1/3600 of a degree, π/648000 rad (Bureau International des Poids et Mesures, The
 * International System of Units, 9th ed., 2019, table of non-SI units; MEMORY). Values DERIVED from the definition.
 * The common rounding of 0.000005 a second is 3 % high.
 */
import { describe, it } from 'vitest';
import { arcSecondsToLength } from '../../src/mechanics/contouring/arc-length.ts';
import { expectClose } from '../close-to.ts';

/** A thousandth of a micrometer, in mm. */
const THOUSANDTH = { absolute: 1e-6 };

describe('arc seconds to micrometers', () => {
  it.each([
    [1, 100, 0.4848],
    [10, 100, 4.8481],
    [10, 250, 12.1203],
    [5, 500, 12.1203],
    [20, 150, 14.5444],
    [60, 250, 72.7221],
    // parallelism of 5 seconds over 150 mm
    [5, 150, 3.636],
  ])('%f″ at %f mm are %f µm', (seconds, radius, micrometers) => {
    expectClose(arcSecondsToLength(radius, seconds), micrometers / 1000, THOUSANDTH);
  });

  it('25 µm at 250 mm are 20.6265″', () => {
    expectClose(0.025 / arcSecondsToLength(250, 1), 20.6265, {
      absolute: 0.00005,
    });
  });

  it('the rounded factor of 0.000005 is 3 % high', () => {
    expectClose((0.000005 * 100) / arcSecondsToLength(100, 1), 1.0313, {
      absolute: 0.0001,
    });
  });
});
