import { blockInertia, cylinderInertia, parallelAxis } from '../../../mechanics/forces/inertia.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';

const shared = {
  m: rises(part.mass),
  e: rises(part.eccentricity),
  fixture: rises(part.fixtureMass),
  F: rises(part.fixtureDiameter),
};

const turned = greatest(['part'], (of) => [
  of.part?.shape === 'round'
    ? term(
        'round part and fixture',
        { ...shared, d: rises(part.length) },
        (values) =>
          parallelAxis(cylinderInertia(values.m, values.d / 2), values.m, values.e) +
          cylinderInertia(values.fixture, values.F / 2),
      )
    : term(
        'block and fixture',
        { ...shared, a: rises(part.length), b: rises(part.width) },
        (values) =>
          parallelAxis(blockInertia(values.m, values.a, values.b), values.m, values.e) +
          cylinderInertia(values.fixture, values.F / 2),
      ),
]);

export const inertia = defineCheck({
  id: 'inertia',
  stage: 'envelope',
  about: 'part',
  unit: 'kg·m²',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'inertia about the rotary axis',
      need: turned,
      have: theInput(['rotary'], rotary.inertia),
    },
  ],
  // makers publish it or not; what it costs is time, not fit
  advisory: (of) => of.rotary.inertia.low !== of.rotary.inertia.high,
  formula: '½·m·r² (round) or m·(a² + b²)/12 (block), + m·e², + ½·fixture mass·(F/2)² ≤ inertia it turns',
  source: 'mechanics of rigid bodies; parallel-axis theorem',
  remedies: ['larger-rotary', 'lighter-fixture', 'centered-part'],
  examples: [
    {
      what: 'a steel disc of 200 mm and 50 mm without a fixture',
      given: {
        part: {
          shape: 'round',
          diameter: 200,
          length: 50,
          material: 'steel-carbon',
          holding: { diameter: 0, mass: 0 },
        },
        rotary: { inertia: 0.07 },
      },
      verdict: 'holds',
      need: 0.061654,
      have: 0.07,
    },
    {
      what: 'a steel block of 200 × 150 × 100 mm, 80 mm off the axis',
      given: {
        part: {
          size: [200, 150, 100],
          material: 'steel-carbon',
          eccentricity: 80,
          holding: { diameter: 0, mass: 0 },
        },
        rotary: { inertia: 0.27 },
      },
      verdict: 'fails',
      need: 0.273376,
      have: 0.27,
    },
    {
      what: 'an inertia that is not published',
      given: { rotary: { inertia: 'unknown' } },
      verdict: 'open',
    },
  ],
});
