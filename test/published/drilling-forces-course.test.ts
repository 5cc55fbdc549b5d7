/**
 * "Basic drilling: drilling forces", an online course on machining (mmc-permanent.learnways.com, course 81).
 * PRINTED: a drill of 10 mm at 0.3 mm a revolution meets a thrust of 2500 N; the material is not named.
 * Our formula leaves out the chisel edge, which presses without cutting, so it stays below measured thrusts.
 */
import { describe, expect, it } from 'vitest';
import { drillThrust } from '../../src/mechanics/forces/drill-thrust.ts';
import { MATERIALS, type MaterialId } from '../../src/mechanics/forces/materials.ts';

describe('drilling forces: 10 mm, 0.3 mm a revolution', () => {
  it.each<MaterialId>(['steel-carbon', 'steel-alloy', 'stainless-austenitic'])(
    '%s: between half and all of 2500 N',
    (id) => {
      const { kc11, mc } = MATERIALS[id];
      const thrust = drillThrust({ kc11, mc, diameter: 10, feed: 0.3 });
      expect(thrust).toBeGreaterThan(1250);
      expect(thrust).toBeLessThan(2500);
    },
  );
});
