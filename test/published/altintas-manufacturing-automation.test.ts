/**
 * Y. Altintas, Manufacturing Automation, ch. 2: chip thickness h = c·sin φ and the sum over the teeth in
 * the cut, straight teeth. MEMORY, consistent with public code; the values are DERIVED, confirmed by summing
 * over 36 000 positions of the tool.
 * Ours takes every tooth that can be in the cut at the thickest chip: never below the peak, equal to it with
 * one tooth in the cut.
 */
import { describe, expect, it } from 'vitest';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { peakTangentialForce } from '../../src/mechanics/forces/peak-tangential-force.ts';
import { teethInCut } from '../../src/mechanics/forces/teeth-in-cut.ts';
import { expectClose } from '../close-to.ts';

/** Five digits of the derived values. */
const WORKED = { percent: 0.01 };
const D = 20;
const widthFor = (angle: number): number => (D / 2) * (1 - Math.cos((angle * Math.PI) / 180));

/** From the edge: [teeth, angle in the cut, mean and peak of the sum of sin φ, most teeth at once]. */
const edgeCuts: readonly [teeth: number, angle: number, mean: number, peak: number, most: number][] = [
  [2, 180, 0.63662, 1, 1],
  [3, 180, 0.95493, 1, 2],
  [4, 180, 1.27324, Math.SQRT2, 2],
  [2, 90, 0.31831, 1, 1],
  [3, 90, 0.47746, 1, 1],
  [4, 90, 0.63662, 1, 1],
  [5, 90, 0.79577, 1.30902, 2],
  [4, 60, 0.31831, 0.86603, 1],
];

describe('summed chip thickness over the teeth, cuts from the edge (DERIVED)', () => {
  it.each(edgeCuts)('%i teeth over %i°: the mean is %f of the feed', (teeth, angle, mean) => {
    expectClose((teeth * angle * meanChipThickness(1, widthFor(angle), D)) / 360, mean, WORKED);
  });

  it.each(edgeCuts)('%i teeth over %i°: at most this many at once', (teeth, angle, _mean, _peak, most) => {
    expect(teethInCut(teeth, angle)).toBe(most);
  });

  it.each(edgeCuts)(
    '%i teeth over %i°: our peak is not below the true one',
    (teeth, angle, _mean, peak, most) => {
      const cut = {
        kc11: 1000,
        mc: 0,
        diameter: D,
        teeth,
        ap: 1,
        ae: widthFor(angle),
        fz: 0.1,
      };
      const ours = peakTangentialForce(cut) / 100;
      if (most === 1) expectClose(ours, peak, WORKED);
      else expect(ours).toBeGreaterThan(peak);
      expect(ours).toBeLessThanOrEqual(most * 1.0000001);
    },
  );
});

describe('teeth at once, cuts inside the width of the tool (DERIVED)', () => {
  it('5 teeth over 88.82° (centered, 70 % of the diameter): 2', () => {
    expect(teethInCut(5, 134.41 - 45.59)).toBe(2);
  });

  it('6 teeth over 120°: 2', () => {
    expect(teethInCut(6, 120)).toBe(2);
  });
});

describe('one tooth, aluminum coefficients 796.1 N/mm² and 27.7 N/mm, 2 mm deep, feed 0.1 mm (DERIVED)', () => {
  const edge = 2 * 27.7;

  it('at 90° the tangential force is 214.62 N, of which the chip makes 159.22', () => {
    const chip = peakTangentialForce({
      kc11: 796.1,
      mc: 0,
      diameter: D,
      teeth: 1,
      ap: 2,
      ae: widthFor(90),
      fz: 0.1,
    });
    expectClose(chip + edge, 214.62, { absolute: 0.01 });
  });

  it('at 30° the tangential force is 135.01 N', () => {
    const chip = peakTangentialForce({
      kc11: 796.1,
      mc: 0,
      diameter: D,
      teeth: 1,
      ap: 2,
      ae: widthFor(30),
      fz: 0.1,
    });
    expectClose(chip + edge, 135.01, { absolute: 0.01 });
  });
});
