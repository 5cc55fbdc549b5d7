import { describe, expect, it } from 'vitest';
import { centeredEngagementAngle } from '../../../src/mechanics/forces/centered-engagement-angle.ts';
import { drillThrust } from '../../../src/mechanics/forces/drill-thrust.ts';
import { entryAngle } from '../../../src/mechanics/forces/entry-angle.ts';
import { greatestChipThickness } from '../../../src/mechanics/forces/greatest-chip-thickness.ts';
import { MATERIAL_IDS, MATERIALS } from '../../../src/mechanics/forces/materials.ts';
import { meanChipThickness } from '../../../src/mechanics/forces/mean-chip-thickness.ts';
import { peakTangentialForce } from '../../../src/mechanics/forces/peak-tangential-force.ts';
import { specificCuttingForce } from '../../../src/mechanics/forces/specific-cutting-force.ts';
import { teethInCut } from '../../../src/mechanics/forces/teeth-in-cut.ts';
import { BELOW, WITHOUT_BOUND } from './bounds.ts';

const drilling = { kc11: 1500, mc: 0.22, diameter: 10, feed: 0.2 };
const shoulder = { kc11: 1500, mc: 0.22, diameter: 20, teeth: 4, ap: 10, ae: 5, fz: 0.1 };

describe('on the edge of what can be', () => {
  it.each([
    ['a slot is in the cut for half a turn', () => entryAngle(20, 20), 180],
    ['so is a centered one', () => centeredEngagementAngle(20, 20), 180],
    ['no width is in the cut for nothing', () => entryAngle(0, 20), 0],
    ['no centered width either', () => centeredEngagementAngle(0, 20), 0],
    ['no tool and no width', () => entryAngle(0, 0), 0],
    ['no tool and no centered width', () => centeredEngagementAngle(0, 0), 0],
    ['no feed leaves no chip', () => greatestChipThickness(0, 5, 20), 0],
    ['no feed leaves no mean chip', () => meanChipThickness(0, 5, 20), 0],
    ['no width leaves no mean chip, whatever its angle', () => meanChipThickness(0.1, 0, 20, 0), 0],
    ['no width of no tool leaves none', () => meanChipThickness(0.1, 0, 0), 0],
    [
      'none beside a tool without bound, whatever its angle',
      () => meanChipThickness(0.1, 5, WITHOUT_BOUND, 0),
      0,
    ],
    ['a drill in nothing', () => drillThrust({ ...drilling, kc11: 0 }), 0],
    ['a drill of no diameter', () => drillThrust({ ...drilling, diameter: 0 }), 0],
    [
      'a drill that stands, however wide',
      () => drillThrust({ ...drilling, diameter: WITHOUT_BOUND, feed: 0 }),
      0,
    ],
    ['a shoulder in nothing', () => peakTangentialForce({ ...shoulder, kc11: 0 }), 0],
    ['a shoulder of no depth', () => peakTangentialForce({ ...shoulder, ap: 0 }), 0],
    [
      'no chip takes no force, however deep',
      () => peakTangentialForce({ ...shoulder, fz: 0, ap: WITHOUT_BOUND }),
      0,
    ],
    ['a specific force of nothing', () => specificCuttingForce(0, 0.22, 0.1), 0],
    ['a specific force at 1 mm, whatever the exponent', () => specificCuttingForce(1500, 0.22, 1), 1500],
    ['a specific force of no exponent', () => specificCuttingForce(1500, 0, 0.1), 1500],
    ['no teeth', () => teethInCut(0, 90), 0],
    ['teeth over no angle', () => teethInCut(4, 0), 0],
    ['teeth over a whole turn', () => teethInCut(4, 360), 4],
  ])('%s', (_what, compute, value) => expect(compute()).toBe(value));

  it('a mean chip over half a turn is 2/π of the feed', () => {
    expect(meanChipThickness(0.1, 20, 20, 180)).toBeCloseTo(0.2 / Math.PI, 12);
  });

  it('the force of a material without exponent is area times specific force', () => {
    expect(drillThrust({ ...drilling, mc: 0 })).toBeCloseTo(1500 * 0.5 * Math.sin((59 * Math.PI) / 180), 9);
    // half the feed is the greatest chip where a quarter of the diameter is cut: sin 60° of it
    const [h, inCut] = [0.1 * Math.sqrt(0.75), 1];
    expect(peakTangentialForce({ ...shoulder, mc: 0 })).toBeCloseTo(1500 * h * 10 * inCut, 9);
  });
});

describe('one number beyond it', () => {
  it.each([
    ['a width', () => entryAngle(BELOW, 20)],
    ['a diameter', () => entryAngle(BELOW * 2, BELOW)],
    ['a centered width', () => centeredEngagementAngle(BELOW, 20)],
    ['a diameter around it', () => centeredEngagementAngle(BELOW * 2, BELOW)],
    ['a feed of a mean chip', () => meanChipThickness(BELOW, 5, 20)],
    ['a width of a mean chip', () => meanChipThickness(0.1, BELOW, 20, 90)],
    ['a diameter of a mean chip', () => meanChipThickness(0.1, BELOW * 2, BELOW, 90)],
    ['an angle below nothing', () => meanChipThickness(0.1, 5, 20, BELOW)],
    ['a force of a drill', () => drillThrust({ ...drilling, kc11: BELOW })],
    ['an exponent of a drill', () => drillThrust({ ...drilling, mc: BELOW })],
    ['an exponent of one, drilling', () => drillThrust({ ...drilling, mc: 1 })],
    ['a drill', () => drillThrust({ ...drilling, diameter: BELOW })],
    ['a feed of a drill', () => drillThrust({ ...drilling, feed: BELOW })],
    ['a force of a shoulder', () => peakTangentialForce({ ...shoulder, kc11: BELOW })],
    ['an exponent of a shoulder', () => peakTangentialForce({ ...shoulder, mc: BELOW })],
    ['an exponent of one', () => peakTangentialForce({ ...shoulder, mc: 1 })],
    ['a depth of a shoulder', () => peakTangentialForce({ ...shoulder, ap: BELOW })],
    ['a specific force', () => specificCuttingForce(BELOW, 0.22, 0.1)],
    ['its exponent', () => specificCuttingForce(1500, BELOW, 0.1)],
    ['its chip', () => specificCuttingForce(1500, 0.22, BELOW)],
    ['teeth', () => teethInCut(BELOW, 90)],
    ['an angle of teeth', () => teethInCut(4, BELOW)],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});

describe('the table of materials', () => {
  it('says of titanium alone that its fine chips burn', () => {
    expect(MATERIAL_IDS.filter((id) => MATERIALS[id].combustible)).toEqual(['titanium']);
  });

  it('has a row for each material and none besides', () => {
    expect(Object.keys(MATERIALS)).toEqual([...MATERIAL_IDS]);
  });

  it('has a feed and a speed to cut each with', () => {
    for (const id of MATERIAL_IDS) {
      expect(MATERIALS[id].fz, id).toBeGreaterThan(0);
      expect(MATERIALS[id].vc, id).toBeGreaterThan(0);
    }
  });
});
