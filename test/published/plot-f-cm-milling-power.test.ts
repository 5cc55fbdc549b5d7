/**
 * reox/Plot-F_cm, plot_Fcm.R (commit 61c57cb5): cutting force and power of side milling after
 * J. Dietrich, H. Tschätsch, Praxis der Zerspanungstechnik, 11th ed., 2014. The procedure is PRINTED there,
 * it stores no output: values DERIVED. It corrects the specific force for wear (1.3), chip compression (1.2)
 * and rake, and takes the helix of 45° for the cutting edge angle, so that its chips are thinner by sin 45°
 * (and wider by as much, which cancels in the power). Ours are bare values for an edge angle of 90°.
 */
import { describe, it } from 'vitest';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { entryAngle } from '../../src/mechanics/forces/entry-angle.ts';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { specificCuttingForce } from '../../src/mechanics/forces/specific-cutting-force.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

/** The values are given to four or five digits. */
const WORKED = { percent: 0.2 };
const cut = { diameter: 3, ap: 3, ae: 0.25, teeth: 2 };
const WEAR = 1.3;
const COMPRESSION = 1.2;
const EDGE = Math.SQRT1_2;
const EFFICIENCY = 0.8;
const rakeFactor = (rake: number, reference: number): number => 1 - (rake - reference) / 100;

const calls = [
  {
    id: 'M-10',
    vc: 200,
    fz: 0.1,
    kc11: 1780,
    mc: 0.17,
    rake: rakeFactor(0, 6),
    hm: 0.02012,
    kc: 5717.8,
    power: 0.3792,
  },
  {
    id: 'M-11',
    vc: 240,
    fz: 0.05,
    kc11: 1780,
    mc: 0.17,
    rake: rakeFactor(0, 6),
    hm: 0.01006,
    kc: 6432.8,
    power: 0.256,
  },
  {
    id: 'M-12',
    vc: 300,
    fz: 0.06,
    kc11: 700,
    mc: 0.18,
    rake: rakeFactor(10, 0),
    hm: 0.01207,
    kc: 2176.4,
    power: 0.1299,
  },
  {
    id: 'M-13',
    vc: 360,
    fz: 0.03,
    kc11: 700,
    mc: 0.18,
    rake: rakeFactor(10, 0),
    hm: 0.00604,
    kc: 2465.6,
    power: 0.0883,
  },
];

describe('plot_Fcm.R, all four calls: end mill of 3 mm', () => {
  it('the angle in the cut is 33.557°', () => {
    expectClose(entryAngle(cut.ae, cut.diameter), 33.557, WORKED);
  });

  it('call 1 (M-10): 21 220.7 rev/min and 4244.1 mm/min', () => {
    const n = spindleSpeed(200, cut.diameter);
    expectClose(n, 21_220.7, WORKED);
    expectClose(tableFeed(0.1, cut.teeth, n), 4244.1, WORKED);
  });

  it.each(calls)('$id: mean chip $hm mm', ({ fz, hm }) => {
    expectClose(meanChipThickness(fz, cut.ae, cut.diameter) * EDGE, hm, WORKED);
  });

  it.each(calls)('$id: corrected specific force $kc N/mm²', ({ fz, kc11, mc, rake, kc }) => {
    const bare = specificCuttingForce(kc11, mc, meanChipThickness(fz, cut.ae, cut.diameter) * EDGE);
    expectClose(bare * WEAR * COMPRESSION * rake, kc, WORKED);
  });

  it.each(calls)('$id: power of the motor $power kW', ({ vc, fz, kc, power }) => {
    const vf = tableFeed(fz, cut.teeth, spindleSpeed(vc, cut.diameter));
    expectClose(cuttingPower(cut.ap, cut.ae, vf, kc) / EFFICIENCY, power, WORKED);
  });
});
