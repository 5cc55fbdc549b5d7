/**
 * Three-phase current from hardhatmath.com and industrialmonitordirect.com (PRINTED); floor loads of IBC Table
 * 1607.1 and ASCE 7 (REPRINT), a pallet from engineeringtoolbox.com (PRINTED).
 */
import { describe, expect, it } from 'vitest';
import { floorPressure } from '../../src/mechanics/building/floor-pressure.ts';
import { supplyCurrent } from '../../src/mechanics/building/supply-current.ts';
import { expectClose } from '../close-to.ts';

const EXACT = { percent: 0.01 };
const PA_PER_PSF = 47.880259;

describe('current of a supply', () => {
  it('E-1: 208 V and 5.5 A on three phases are 1.98 kVA (PRINTED, three digits)', () => {
    expectClose(supplyCurrent(1.98, 208, 3), 5.5, { percent: 0.5 });
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
  it('P-1: a pallet of 800 kg presses with 7848 N at g 9.81; standard gravity gives 7845 N', () => {
    expectClose(floorPressure(800, 1) * 1000, 7848, { percent: 0.05 });
  });

  it('P-3: 6500 kg on four round pads of 150 mm press with .9021 MPa, 130.8 psi (DERIVED, g 9.81)', () => {
    const pads = 4 * Math.PI * 0.075 ** 2;
    expectClose(floorPressure(6500, pads) / 1000, 0.9021, { percent: 0.05 });
    expectClose((floorPressure(6500, pads) * 1000) / 6894.757, 130.8, { percent: 0.1 });
  });

  it.each([
    [125, 5.985],
    [250, 11.97],
  ])('%d psf of light and heavy manufacturing are %d kPa', (psf, kPa) => {
    const mass = (psf * PA_PER_PSF) / 9.80665;
    expectClose(floorPressure(mass, 1), kPa, EXACT);
    expect(mass).toBeGreaterThan(600);
  });
});
