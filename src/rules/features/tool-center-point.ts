import { known } from '../judging/value.ts';
import { above, hoursWhere } from './finding.ts';
import { defineFeature } from './rule.ts';

const MOVING = { motion: 'simultaneous', tolerance: 0.5 } as const;

export const toolCenterPoint = defineFeature({
  id: 'toolCenterPoint',
  offer: 'toolCenterPoint',
  unit: 'h',
  find: (of) => {
    const { value, parts } = hoursWhere(
      of,
      ({ cases }) => {
        const moving = cases.map(({ motion }) => motion === 'simultaneous');
        return moving.every(Boolean) ? 'yes' : moving.some(Boolean) ? 'perhaps' : 'no';
      },
      'hours with all axes moving',
    );
    return above(
      value,
      known(0, 'none'),
      { need: 'required', why: 'all-axes-move', parts },
      { need: 'not needed', why: 'axes-stand-braked' },
    );
  },
  source: 'common practice, no source',
  examples: [
    { what: 'all axes move in the cut', given: { parts: [MOVING] }, need: 'required' },
    {
      what: 'they stand braked',
      given: { parts: [{ ...MOVING, motion: 'positional' }] },
      need: 'not needed',
      number: 0,
    },
  ],
});
