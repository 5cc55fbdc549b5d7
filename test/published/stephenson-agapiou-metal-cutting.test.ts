/**
 * D. A. Stephenson, J. S. Agapiou, Metal Cutting Theory and Practice, Table 2.1: power for each cm³/min.
 * REPRINT (the source of a public Python library on machining cites it).
 */
import { describe, expect, it } from 'vitest';
import { MATERIALS, type MaterialId } from '../../src/mechanics/forces/materials.ts';
import { specificCuttingForce } from '../../src/mechanics/forces/specific-cutting-force.ts';

/** kW for each cm³/min. */
const TABLE: Partial<Record<MaterialId, readonly [number, number]>> = {
  'aluminum-wrought': [0.012, 0.022],
  'aluminum-cast': [0.012, 0.022],
  'steel-carbon': [0.05, 0.066],
  'steel-alloy': [0.065, 0.09],
  'steel-hardened': [0.09, 0.2],
};

describe('Stephenson and Agapiou, Table 2.1', () => {
  it.each(Object.entries(TABLE))('%s at a chip of 0.05 mm lies inside its band', (id, [low, high]) => {
    const { kc11, mc } = MATERIALS[id as MaterialId];
    const energy = specificCuttingForce(kc11, mc, 0.05) / 60_000;
    // tables of specific force differ by 30 % and more, so that much is allowed at either end
    expect(energy).toBeGreaterThan(low * 0.7);
    expect(energy).toBeLessThan(high * 1.3);
  });
});
