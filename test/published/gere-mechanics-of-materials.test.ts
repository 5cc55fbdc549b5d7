/**
 * J. M. Gere, Mechanics of Materials, 5th ed., table of densities. PRINTED (ah-engr.com, table 3).
 * Titanium alloy and plastic are not in it as such: see the notes.
 */
import { describe, expect, it } from 'vitest';
import { MATERIALS, type MaterialId } from '../../src/mechanics/forces/materials.ts';
import { expectClose } from '../close-to.ts';

/** kg/m³; stainless from the list of simetric.co.uk (PRINTED), nickel alloy from wermac.org (PRINTED). */
const TABLE: Record<MaterialId, readonly [number, number]> = {
  'steel-carbon': [7850, 7850],
  'steel-alloy': [7850, 7850],
  'steel-hardened': [7850, 7850],
  'stainless-austenitic': [7480, 8000],
  'iron-gray': [7000, 7400],
  'iron-ductile': [7000, 7400],
  'aluminum-wrought': [2700, 2800],
  'aluminum-cast': [2700, 2800],
  // the table's titanium; Ti-6Al-4V is lighter: 4420 PRINTED (E. Isakov, trade journal, 2009), 4430 MEMORY
  titanium: [4420, 4500],
  'nickel-alloy': [8500, 8500],
  brass: [8400, 8600],
  // polyethylene 960 to 1400: the top of it is taken
  plastic: [960, 1400],
};

describe('Gere, table of densities: ours lie inside', () => {
  it.each(Object.entries(TABLE))('%s', (id, [low, high]) => {
    const { density } = MATERIALS[id as MaterialId];
    expect(density).toBeGreaterThanOrEqual(low);
    expect(density).toBeLessThanOrEqual(high);
  });
});

describe('a block of 100 × 100 × 50 mm (DERIVED)', () => {
  it.each<[MaterialId, number]>([
    ['aluminum-wrought', 1.35],
    ['steel-carbon', 3.925],
    ['titanium', 2.215],
  ])('of %s has %f kg', (id, mass) => {
    expectClose(MATERIALS[id].density * 0.1 * 0.1 * 0.05, mass, {
      percent: 1e-9,
    });
  });
});
