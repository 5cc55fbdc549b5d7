/**
 * S. Kalpakjian, S. R. Schmid, Manufacturing Engineering and Technology, ch. 24 (milling) and the table of
 * specific energies. Example 24.2 and the table: MEMORY, not verified. The problem on face milling: its
 * statement is PRINTED (tutorsglobe.com 52203008), the answers are DERIVED.
 */
import { describe, expect, it } from 'vitest';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { cuttingTorque } from '../../src/mechanics/forces/cutting-torque.ts';
import { MATERIALS, type MaterialId } from '../../src/mechanics/forces/materials.ts';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { specificCuttingForce } from '../../src/mechanics/forces/specific-cutting-force.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

/** Three printed digits. */
const PRINTED = { percent: 0.5 };

describe('Kalpakjian and Schmid, Example 24.2 (M-6, MEMORY): face milling of aluminum', () => {
  it('removes 108 000 mm³/min', () => {
    expectClose(removalRate(3, 60, 600) * 1000, 108_000, PRINTED);
  });

  it('feeds 0.6 mm a tooth', () => {
    expectClose(tableFeed(0.6, 10, 100), 600, PRINTED);
  });

  it('takes 1.98 kW at 1.1 W·s/mm³', () => {
    expectClose(cuttingPower(3, 60, 600, 1100), 1.98, PRINTED);
  });
});

describe('Kalpakjian and Schmid, problem on face milling (M-7): 150 mm cutter, 8 teeth, 300 rev/min', () => {
  const vf = tableFeed(0.125, 8, 300);

  it('feeds 300 mm/min', () => {
    expectClose(vf, 300, PRINTED);
  });

  it('with 75 % of the cutter engaged removes 101 250 mm³/min and takes 8.4375 kW', () => {
    expectClose(removalRate(3, 112.5, vf) * 1000, 101_250, PRINTED);
    expectClose(cuttingPower(3, 112.5, vf, 5000), 8.4375, PRINTED);
  });

  it('over the stated width of 100 mm takes 7.5 kW and 238.7 N·m', () => {
    expectClose(cuttingPower(3, 100, vf, 5000), 7.5, PRINTED);
    expectClose(cuttingTorque(7.5, 300), 238.7, PRINTED);
  });
});

/** J/mm³ (MEMORY). */
const BANDS: Partial<Record<MaterialId, readonly [number, number]>> = {
  'steel-carbon': [2, 9],
  'steel-alloy': [2, 9],
  'stainless-austenitic': [2, 5],
  'iron-gray': [1.1, 5.4],
  'iron-ductile': [1.1, 5.4],
  titanium: [2, 5],
  'nickel-alloy': [4.8, 6.7],
  brass: [1.4, 3.2],
};

describe('Kalpakjian and Schmid, table of specific energies (MEMORY)', () => {
  it.each(Object.entries(BANDS))('%s at a chip of 0.1 mm lies inside its band', (id, [low, high]) => {
    const { kc11, mc } = MATERIALS[id as MaterialId];
    const energy = specificCuttingForce(kc11, mc, 0.1) / 1000;
    // tables of specific force differ by 30 % and more, so that much is allowed at either end
    expect(energy).toBeGreaterThan(low * 0.7);
    expect(energy).toBeLessThan(high * 1.3);
  });
});
