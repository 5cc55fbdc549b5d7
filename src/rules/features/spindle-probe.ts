import { derived, known } from '../judging/value.ts';
import { hoursSaved } from './finding.ts';
import { defineFeature } from './rule.ts';

const EXACT_AXES = [{ accuracy: { rotary: 0, tilt: 0 } }] as const;
const EXACT_MILL = [{ positioning: 0 }] as const;

/** Needed where the error of centers found by hand spoils the tolerance; else by the minutes that it saves. */
export const spindleProbe = defineFeature({
  id: 'spindleProbe',
  offer: 'spindleProbe',
  unit: 'mm',
  find: (of) => {
    const asking = of
      .outcomesOf('index-accuracy')
      .filter(({ outcome }) => outcome.easing === 'spindle-probe')
      .toSorted((a, b) => a.outcome.relativeMargin.low - b.outcome.relativeMargin.low);
    const hours = hoursSaved(of.setups, of.shop.assume.probeMinutes, 'hours at setups');
    const [worst] = asking;
    if (worst === undefined)
      return {
        need: 'saves',
        sure: true,
        why: 'saves-at-setups',
        number: of.setups,
        limit: known(0, ''),
        parts: [],
        hours,
      };
    const { need, have, hangsOn } = worst.outcome;
    return {
      need: 'required',
      sure: asking.some(({ outcome }) => !outcome.mayHoldPlainly),
      why: 'error-by-hand',
      number: derived(need, 'error by hand', hangsOn),
      limit: derived(have, 'error allowed', hangsOn),
      parts: asking.map(({ name }) => name),
      hours,
    };
  },
  source: 'the check of accuracy between faces; minutes at each setup are an assumption',
  examples: [
    {
      what: 'centers found by hand spoil ± 0.05 mm',
      given: { parts: [{ tolerance: 0.05 }], rotaries: EXACT_AXES, machines: EXACT_MILL },
      need: 'required',
      number: 0.0489898,
    },
    {
      what: '± 0.1 mm is loose enough',
      given: { parts: [{ tolerance: 0.1 }], rotaries: EXACT_AXES, machines: EXACT_MILL },
      need: 'worth having',
    },
    {
      what: 'loose enough, but 200 lots a year',
      given: {
        parts: [{ tolerance: 0.1, yearly: { lots: 200 } }],
        rotaries: EXACT_AXES,
        machines: EXACT_MILL,
      },
      need: 'pays for itself',
    },
  ],
});
