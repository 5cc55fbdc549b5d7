import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { theInput } from '../../sides/single.ts';
import { gravityAboutTilt } from '../../sides/tilt-moment-need.ts';

export const tiltMoment = defineCheck({
  id: 'tilt-moment',
  stage: 'rotary-class',
  about: 'part',
  unit: 'N·m',
  sense: 'at-most',
  applies: (of) => of.rotary.axes === 2,
  comparisons: [
    {
      what: 'gravity about the tilt axis',
      need: gravityAboutTilt,
      have: theInput(['rotary'], rotary.tiltMoment),
    },
  ],
  formula:
    'max over the tilt of m·g·(|z|·sin θ + e·|cos θ|), part and fixture together ≤ moment the tilt axis carries; under a level tool sin and cos change places, and about an upright tilt axis it is 0',
  source: 'statics; g = 9.80665 m/s²',
  remedies: ['larger-rotary', 'lighter-fixture', 'lower-fixture', 'centered-part', 'other-class'],
  examples: [
    {
      what: '10 kg with its center 100 mm above the axis, tilted to 90°',
      given: {
        part: {
          mass: 10,
          size: [60, 60, 100],
          holding: { height: 40, mass: 0 },
        },
        rotary: { faceOffset: 10, tiltMoment: 10 },
      },
      verdict: 'holds',
      need: 9.80665,
      have: 10,
    },
    {
      what: 'tilted to 30° only, half of it acts',
      given: {
        part: {
          mass: 10,
          size: [60, 60, 100],
          holding: { height: 40, mass: 0 },
          approaches: ['top', { slant: 30 }],
        },
        rotary: { faceOffset: 10, tiltMoment: 5 },
      },
      verdict: 'holds',
      need: 4.903325,
      have: 5,
    },
    {
      what: '5 kg as far below the axis as 5 kg is above: nothing left but the eccentricity',
      given: {
        part: {
          mass: 5,
          size: [60, 60, 40],
          holding: { height: 20, mass: 5 },
          eccentricity: 100,
        },
        rotary: { faceOffset: -25, tiltMoment: 4 },
      },
      verdict: 'fails',
      need: 4.903325,
      have: 4,
    },
    {
      what: 'the same 10 kg under a level tool: all of it pulls before it tilts, and half at 60°',
      given: {
        part: {
          mass: 10,
          size: [60, 60, 100],
          holding: { height: 40, mass: 0 },
          approaches: [{ slant: 60 }],
        },
        machine: { spindle: 'horizontal', builtIn: { faceOffset: 10, tiltMoment: 10 } },
      },
      verdict: 'holds',
      need: 9.80665,
      have: 10,
    },
    {
      what: 'about an upright tilt axis nothing pulls',
      given: {
        part: { mass: 10, size: [60, 60, 100], holding: { height: 40, mass: 0 } },
        machine: { spindle: 'horizontal', builtIn: { tiltAxis: 'along-y', faceOffset: 10, tiltMoment: 5 } },
      },
      verdict: 'holds',
      need: 0,
      have: 5,
    },
    {
      what: 'a mass that is not known',
      given: { part: { mass: [2, 40] }, rotary: { tiltMoment: 22 } },
      verdict: 'open',
    },
  ],
});
