import { defineCheck } from '../../judging/check.ts';
import { featureStandard, orderFeature, YES } from '../../sides/feature.ts';

const MOVING = { motion: 'simultaneous', contourCut: 'light' } as const;

export const toolCenterPoint = defineCheck({
  id: 'tool-center-point',
  stage: 'features',
  about: 'part',
  unit: '',
  sense: 'at-most',
  applies: (of) => of.part?.motion === 'simultaneous',
  comparisons: [
    {
      what: 'tool center point control',
      need: YES,
      have: featureStandard('toolCenterPoint'),
      easings: [orderFeature('tool-center-point', 'toolCenterPoint')],
    },
  ],
  categorical: true,
  formula: 'simultaneous work: tool center point control is there or is ordered',
  source: 'common practice, no source',
  remedies: ['other-control', 'larger-machine'],
  examples: [
    {
      what: 'simultaneous work on a control that has it',
      given: {
        part: MOVING,
        machine: { features: { toolCenterPoint: 'standard' } },
      },
      verdict: 'holds',
      need: 1,
      have: 1,
    },
    {
      what: 'it can be ordered',
      given: { part: MOVING, machine: { features: { toolCenterPoint: 9500 } } },
      verdict: 'holds if',
      need: 1,
      have: 0,
    },
    {
      what: 'it cannot be had',
      given: {
        part: MOVING,
        machine: { features: { toolCenterPoint: undefined } },
      },
      verdict: 'fails',
      need: 1,
      have: 0,
    },
    {
      what: 'whether the axes move in the cut is not known',
      given: {
        part: { ...MOVING, motion: 'unknown' },
        machine: { features: { toolCenterPoint: undefined } },
      },
      verdict: 'open',
    },
  ],
});
