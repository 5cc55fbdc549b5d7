/**
 * Three-phase current from hardhatmath.com and industrialmonitordirect.com (PRINTED); floor loads of IBC Table
 * 1607.1 and ASCE 7 Table 4.3-1 (REPRINT, the heavy row from memory); a pallet and the unit psf from
 * engineeringtoolbox.com (PRINTED).
 *
 * No formula here, and so no check:
 * - E-4, E-5, NEC Table 430.250 and 430.22, .24, .52 (motor currents, fuses, feeders): sellers name the connected
 *   load of a whole machine; sizing a branch circuit is a licensed electrician's work.
 * - I = P/(√3·V·pf·eta): as above, what is connected is known in kVA, not what a motor gives off.
 * - NEC 110.26(A), working space: asked of the electrician, the condition on the other side is not known here.
 * - 29 CFR 1910.22, .176 and 1910.36(g)(2), aisles and ways out: the standard gives no width of an aisle. "Equipment
 *   and 3 ft, 4 ft at least" is a letter of 1972 that was withdrawn, so it must not stand in a report as a rule.
 */
import { describe, expect, it } from 'vitest';
import { floorPressure } from '../../src/mechanics/building/floor-pressure.ts';
import { supplyCurrent } from '../../src/mechanics/building/supply-current.ts';
import { expectClose } from '../close-to.ts';

const EXACT = { percent: 0.01 };
const PA_PER_PSF = 47.880259;

describe('current of a supply', () => {
  it('E-1: 208 V and 5.5 A on three phases are 1.98 kVA (PRINTED, rounded from 1.9815)', () => {
    expectClose(supplyCurrent(1.98, 208, 3), 5.5, { percent: 0.5 });
    expectClose(supplyCurrent(1.9815, 208, 3), 5.5, EXACT);
  });

  it.each([
    [75, 480, 90.21],
    [75, 208, 208.18],
    [30, 400, 43.3],
    [40, 230, 100.41],
  ])('E-3: %d kVA at %d V draw %d A (DERIVED)', (power, volts, amps) => {
    expectClose(supplyCurrent(power, volts, 3), amps, EXACT);
  });

  it('one phase draws √3 times as much (DERIVED)', () => {
    expectClose(supplyCurrent(9.2, 230, 1), 40, EXACT);
    expectClose(supplyCurrent(9.2, 230, 1) / supplyCurrent(9.2, 230, 3), Math.sqrt(3), EXACT);
  });
});

describe('pressure on a floor', () => {
  it('P-1: a pallet of 800 kg presses with 7848 N (PRINTED with g 9.81; standard gravity gives 7845 N)', () => {
    expectClose(floorPressure(800, 1) * 1000, 7848, { percent: 0.05 });
    expectClose(floorPressure(800, 1) * 1000, 7845.32, { absolute: 0.005 });
  });

  it('P-3: 6500 kg on four round pads of 150 mm press with .9021 MPa, 130.8 psi (DERIVED, g 9.81)', () => {
    const pads = 4 * Math.PI * 0.075 ** 2;
    expectClose(floorPressure(6500, pads) / 1000, 0.9021, { percent: 0.05 });
    expectClose((floorPressure(6500, pads) * 1000) / 6894.757, 130.8, { percent: 0.1 });
  });

  it.each([
    ['light', 125, 5.985, 'REPRINT'],
    ['heavy', 250, 11.97, 'from memory'],
  ])('%s manufacturing: %d psf are %d kPa (%s)', (_what, psf, kPa) => {
    const mass = (psf * PA_PER_PSF) / 9.80665;
    expectClose(floorPressure(mass, 1), kPa, EXACT);
    expect(mass).toBeGreaterThan(600);
  });
});
