import { defineCheck } from '../../judging/check.ts';
import { featureStandard, orderFeature } from '../../sides/feature.ts';
import { loadedOffCenter } from '../../sides/off-center.ts';

const OFF = { eccentricity: 20, motion: 'positional' } as const;
const BY_HAND = { loading: 'by-hand' } as const;

export const rotatingWorkOffset = defineCheck({
  id: 'rotating-work-offset',
  stage: 'features',
  about: 'part',
  unit: '',
  sense: 'at-most',
  applies: (of) => of.part?.motion !== 'simultaneous',
  comparisons: [
    {
      what: 'rotating work offset',
      need: loadedOffCenter,
      have: featureStandard('rotatingWorkOffset'),
      easings: [orderFeature('rotating-work-offset', 'rotatingWorkOffset')],
    },
  ],
  categorical: true,
  formula: 'a part loaded by hand off the rotary axis: rotating work offset is there or is ordered',
  source: 'common practice, no source',
  remedies: ['centered-part', 'other-control', 'larger-machine'],
  examples: [
    {
      what: 'a part on the axis needs none',
      given: {
        part: { ...OFF, eccentricity: 0 },
        work: BY_HAND,
        machine: { features: { rotatingWorkOffset: undefined } },
      },
      verdict: 'holds',
      need: 0,
      have: 0,
    },
    {
      what: '20 mm off the axis, and it can be ordered',
      given: {
        part: OFF,
        work: BY_HAND,
        machine: { features: { rotatingWorkOffset: 4200 } },
      },
      verdict: 'holds if',
      need: 1,
      have: 0,
    },
    {
      what: '20 mm off the axis, and it cannot be had',
      given: {
        part: OFF,
        work: BY_HAND,
        machine: { features: { rotatingWorkOffset: undefined } },
      },
      verdict: 'fails',
      need: 1,
      have: 0,
    },
    {
      what: 'how parts are loaded is not known',
      given: {
        part: OFF,
        work: { loading: 'unknown' },
        machine: { features: { rotatingWorkOffset: undefined } },
      },
      verdict: 'open',
    },
  ],
});
