import { known } from '../judging/value.ts';
import { above } from './finding.ts';
import { defineFeature } from './rule.ts';

export const axisDrives = defineFeature({
  id: 'axisDrives',
  offer: null,
  unit: '',
  find: ({ machine, rotary }) => {
    const axes = known(rotary.axes, 'rotary axes');
    // a built-in table comes with its drives
    const fitted = machine.builtIn ? axes : machine.drivesFitted;
    return above(
      axes,
      fitted,
      { need: 'required', why: 'axes-to-drive' },
      { need: 'not needed', why: 'axes-driven' },
    );
  },
  source: 'one drive for each rotary axis; common practice, no source',
  examples: [
    { what: 'two axes, none is driven yet', given: {}, need: 'required', number: 2 },
    {
      what: 'both drives are fitted',
      given: { machines: [{ axisDrives: { fitted: 2, offered: 0 } }] },
      need: 'not needed',
      number: 2,
    },
  ],
});
