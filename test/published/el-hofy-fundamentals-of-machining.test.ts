/**
 * H. A.-G. El-Hofy, Fundamentals of Machining Processes: Conventional and Nonconventional Processes,
 * 2nd ed., CRC Press 2014. Page 174: angle of contact and greatest chip. Page 189: worked example of a slot.
 * PRINTED (read in the publisher's online view, chapters 50 and 53).
 */
import { describe, it } from 'vitest';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { cuttingTorque } from '../../src/mechanics/forces/cutting-torque.ts';
import { entryAngle } from '../../src/mechanics/forces/entry-angle.ts';
import { greatestChipThickness } from '../../src/mechanics/forces/greatest-chip-thickness.ts';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

/** The book prints three digits. */
const THREE_DIGITS = { percent: 1 };
/** Our own working of the book's formulas, to five digits. */
const WORKED = { percent: 0.01 };

const slot = {
  diameter: 30,
  teeth: 8,
  depth: 4,
  fz: 0.1,
  vf: 120,
  ks: 1000,
  efficiency: 0.9,
};

describe('El-Hofy, example on p. 189 (M-1): a slot with a cutter of 30 mm', () => {
  it('the speed of 150 rev/min gives the feed of 120 mm/min', () => {
    expectClose(tableFeed(slot.fz, slot.teeth, 150), 120, WORKED);
  });

  it('the cutting speed of 14.13 m/min gives the speed of 150 rev/min', () => {
    expectClose(spindleSpeed(14.13, slot.diameter), 150, THREE_DIGITS);
  });

  it('the mean cutting power is 0.24 kW', () => {
    expectClose(cuttingPower(slot.depth, slot.diameter, slot.vf, slot.ks), 0.24, THREE_DIGITS);
  });

  it('the motor power is 0.27 kW', () => {
    const power = cuttingPower(slot.depth, slot.diameter, slot.vf, slot.ks);
    // 0.2667 printed as 0.27: two digits
    expectClose(power / slot.efficiency, 0.27, { absolute: 0.005 });
  });

  it('the torque is 15.28 N·m (DERIVED from the printed power and speed)', () => {
    expectClose(cuttingTorque(0.24, 150), 15.28, { percent: 0.02 });
  });

  it('power over removal rate is the specific force of 1000 N/mm² (DERIVED)', () => {
    const rate = removalRate(slot.depth, slot.diameter, slot.vf);
    expectClose(rate, 14.4, WORKED);
    expectClose((0.24 / rate) * 60_000, slot.ks, WORKED);
  });
});

describe('El-Hofy, formulas of p. 174: contact angle and greatest chip', () => {
  it('cos φ = 1 − 2·t/d: 36.870° at a tenth of the diameter, 90° at half, 180° in a slot (DERIVED)', () => {
    expectClose(entryAngle(5, 50), 36.87, WORKED);
    expectClose(entryAngle(25, 50), 90, WORKED);
    expectClose(entryAngle(30, 30), 180, WORKED);
  });

  it('the greatest chip of the edge entry is 2·f·√(t/d·(1 − t/d)) up to half the diameter (DERIVED)', () => {
    const exact = (fz: number, t: number, d: number): number => 2 * fz * Math.sqrt((t / d) * (1 - t / d));
    expectClose(greatestChipThickness(0.1, 5, 50), exact(0.1, 5, 50), WORKED);
    expectClose(greatestChipThickness(0.1, 12.5, 50), 0.08660254, WORKED);
    expectClose(greatestChipThickness(0.1, 12.5, 50), exact(0.1, 12.5, 50), WORKED);
  });
});
