/**
 * Table of specific cutting forces keyed to ISO 513 letters and VDI 3323 groups, and the formulas beside
 * it, in a cutting-tool maker's user guide, 2017, p. 558, and 2022, p. 111 (name withheld).
 * Table PRINTED; values computed from it DERIVED. Sharp tools, no correction factors.
 * The two editions differ by a factor of 1.7 for titanium: specific forces are good to about ±30 %.
 */
import { describe, expect, it } from 'vitest';
import { centeredEngagementAngle } from '../../src/mechanics/forces/centered-engagement-angle.ts';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { cuttingTorque } from '../../src/mechanics/forces/cutting-torque.ts';
import { entryAngle } from '../../src/mechanics/forces/entry-angle.ts';
import { MATERIALS, type MaterialId } from '../../src/mechanics/forces/materials.ts';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { specificCuttingForce } from '../../src/mechanics/forces/specific-cutting-force.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

/** Five digits of the derived values. */
const WORKED = { percent: 0.1 };

const rows: readonly [MaterialId, group: number, kc11: number, mc: number][] = [
  ['steel-carbon', 2, 1500, 0.22],
  ['steel-alloy', 6, 1775, 0.24],
  ['stainless-austenitic', 14, 2150, 0.2],
  ['iron-gray', 15, 1150, 0.2],
  ['iron-ductile', 17, 1225, 0.25],
  ['aluminum-wrought', 22, 800, 0.25],
  ['aluminum-cast', 23, 700, 0.25],
  ['brass', 27, 700, 0.27],
  ['nickel-alloy', 33, 3300, 0.24],
  ['titanium', 37, 2110, 0.22],
];

describe('VDI 3323 groups, 2017: our materials carry the printed values', () => {
  it.each(rows)('%s is group %i: %f N/mm², %f', (id, _group, kc11, mc) => {
    expect(MATERIALS[id].kc11).toBe(kc11);
    expect(MATERIALS[id].mc).toBe(mc);
  });

  it('hardened steel is group 38: 4600 N/mm²; its exponent is our assumption', () => {
    expect(MATERIALS['steel-hardened'].kc11).toBe(4600);
    expect(MATERIALS['steel-hardened'].source).toContain('assumption');
  });
});

describe('VDI 3323 groups: specific force at 0.05, 0.1, 0.2 and 1 mm (DERIVED)', () => {
  const forces: readonly [kc11: number, mc: number, at: readonly number[]][] = [
    [1500, 0.22, [2899.5, 2489.4, 2137.3, 1500]],
    [1775, 0.24, [3642.9, 3084.6, 2611.9, 1775]],
    [2150, 0.2, [3914.2, 3407.5, 2966.4, 2150]],
    [1150, 0.2, [2093.6, 1822.6, 1586.7, 1150]],
    [800, 0.25, [1691.8, 1422.6, 1196.3, 800]],
    [3300, 0.24, [6772.7, 5734.7, 4855.9, 3300]],
  ];
  it.each(forces)('%f N/mm², %f', (kc11, mc, at) => {
    [0.05, 0.1, 0.2, 1].forEach((h, index) => {
      expectClose(specificCuttingForce(kc11, mc, h), at[index] ?? Number.NaN, {
        percent: 0.003,
      });
    });
  });
});

describe('formulas of the guide: mean chip, D 50, fz 0.1 (DERIVED)', () => {
  const chips: readonly [ae: number, angle: number, hm: number][] = [
    [5, 36.87, 0.03108],
    [12.5, 60, 0.04775],
    [25, 90, 0.06366],
    [37.5, 120, 0.07162],
    [50, 180, 0.06366],
  ];
  it.each(chips)('from the side, %f mm wide: %f° and %f mm', (ae, angle, hm) => {
    expectClose(entryAngle(ae, 50), angle, { percent: 0.001 });
    expectClose(meanChipThickness(0.1, ae, 50), hm, { absolute: 0.000005 });
  });

  const centered: readonly [ae: number, angle: number, hm: number][] = [
    [5, 11.4783, 0.09983],
    [25, 60, 0.09549],
    [37.5, 97.181, 0.08844],
    [50, 180, 0.06366],
  ];
  it.each(centered)('centered, %f mm wide: %f° and %f mm', (ae, angle, hm) => {
    expectClose(centeredEngagementAngle(ae, 50), angle, { percent: 0.001 });
    expectClose(meanChipThickness(0.1, ae, 50, centeredEngagementAngle(ae, 50)), hm, { absolute: 0.000005 });
  });
});

describe('formulas of the guide: whole chain (DERIVED)', () => {
  const side = entryAngle;
  const centered = centeredEngagementAngle;
  // [diameter, teeth, ap, ae, vc, fz, kc11, mc], [n, vf, hm, kc, Q, P, M, mean teeth in the cut]
  const chains = [
    [
      'low-alloy steel, group 6, centered',
      centered,
      [63, 5, 3, 45, 180, 0.12, 1775, 0.24],
      [909.46, 545.67, 0.10774, 3029.9, 73.67, 3.72, 39.06, 1.266],
    ],
    [
      'aluminum, group 22, side',
      side,
      [16, 3, 10, 8, 400, 0.08, 800, 0.25],
      [7957.75, 1909.86, 0.05093, 1684, 152.79, 4.2883, 5.146, 0.75],
    ],
    [
      'austenitic, group 14, centered',
      centered,
      [50, 4, 2, 35, 120, 0.1, 2150, 0.2],
      [763.94, 305.58, 0.09028, 3478, 21.39, 1.2399, 15.5, 0.987],
    ],
    [
      'titanium, group 37 of 2022, side',
      side,
      [20, 4, 10, 5, 60, 0.06, 1245, 0.24],
      [954.93, 229.18, 0.02865, 2920.6, 11.46, 0.5578, 5.578, 0.667],
    ],
    [
      'titanium, group 37 of 2017, side',
      side,
      [20, 4, 10, 5, 60, 0.06, 2110, 0.22],
      [954.93, 229.18, 0.02865, 4610.2, 11.46, 0.8805, 8.805, 0.667],
    ],
    [
      'nickel alloy, group 33, centered',
      centered,
      [50, 4, 1.5, 30, 35, 0.08, 3300, 0.24],
      [222.82, 71.3, 0.07459, 6152.7, 3.21, 0.329, 14.1, 0.819],
    ],
  ] as const;

  it.each(chains)('%s', (_name, engagement, [d, z, ap, ae, vc, fz, kc11, mc], expected) => {
    const angle = engagement(ae, d);
    const n = spindleSpeed(vc, d);
    const vf = tableFeed(fz, z, n);
    const hm = meanChipThickness(fz, ae, d, angle);
    const kc = specificCuttingForce(kc11, mc, hm);
    const power = cuttingPower(ap, ae, vf, kc);
    const found = [n, vf, hm, kc, removalRate(ap, ae, vf), power, cuttingTorque(power, n), (z * angle) / 360];
    found.forEach((value, index) => {
      expectClose(value, expected[index] ?? Number.NaN, WORKED);
    });
  });

  it.each(chains)('%s: power is force on the teeth times cutting speed', (_name, engagement, cut) => {
    const [d, z, ap, ae, vc, fz, kc11, mc] = cut;
    const angle = engagement(ae, d);
    const hm = meanChipThickness(fz, ae, d, angle);
    const kc = specificCuttingForce(kc11, mc, hm);
    const force = ap * hm * kc * ((z * angle) / 360);
    const power = cuttingPower(ap, ae, tableFeed(fz, z, spindleSpeed(vc, d)), kc);
    expectClose(power, (force * vc) / 60_000, { percent: 1e-7 });
  });
});
