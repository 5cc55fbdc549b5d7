import { known } from '../judging/value.ts';
import { hoursSaved } from './finding.ts';
import { defineFeature } from './rule.ts';

const OFFERED = { machines: [{ features: { toolSetter: 2400 } }] } as const;

export const toolSetter = defineFeature({
  id: 'toolSetter',
  offer: 'toolSetter',
  unit: '',
  find: ({ setups, shop: { assume } }) => ({
    need: 'saves',
    sure: true,
    why: 'saves-at-tools',
    number: setups,
    limit: known(assume.toolsPerSetup, 'assume.toolsPerSetup'),
    parts: [],
    hours: hoursSaved(setups, assume.setterMinutes * assume.toolsPerSetup, 'hours at tools'),
  }),
  source: 'minutes at each tool and tools at each setup are assumptions',
  examples: [
    {
      what: '12 setups a year: 2.4 h at 70 in 5 years are less than it costs',
      given: { parts: [{ tolerance: 0.5 }], ...OFFERED },
      need: 'worth having',
      number: 12,
    },
    {
      what: '60 setups a year',
      given: { parts: [{ tolerance: 0.5, yearly: { lots: 60 } }], ...OFFERED },
      need: 'pays for itself',
      number: 60,
    },
    {
      what: 'tools are measured elsewhere',
      given: { parts: [{ tolerance: 0.5 }], ...OFFERED, assume: { toolsPerSetup: 0 } },
      need: 'not needed',
    },
  ],
});
