import { most, NOTHING } from './finding.ts';
import { defineFeature } from './rule.ts';

/** With tilting axes nobody sees a collision coming from the program alone. */
export const camPost = defineFeature({
  id: 'camPost',
  offer: null,
  unit: '°',
  find: ({ rotary, covered }) => {
    const tilts = covered.flatMap(({ family }) => family.cases.map(({ tilt }) => tilt));
    const greatest = rotary.axes === 2 ? most(tilts, 'greatest tilt') : NOTHING;
    const needed = rotary.axes === 2 && covered.length > 0;
    return {
      need: needed ? 'required' : 'worth having',
      sure: true,
      why: needed ? 'tilt-nobody-sees' : 'one-axis-program',
      number: greatest,
      limit: NOTHING,
      parts: [],
      hours: null,
    };
  },
  source: 'common practice, no source',
  examples: [
    {
      what: 'five sides are tilted by 90°',
      given: { parts: [{ tolerance: 0.5 }] },
      need: 'required',
      number: 90,
    },
    {
      what: 'one level axis',
      given: {
        parts: [{ tolerance: 0.5, approaches: ['around'] }],
        rotaries: [{ class: 'single-axis', tilt: null }],
      },
      need: 'worth having',
      number: 0,
    },
  ],
});
