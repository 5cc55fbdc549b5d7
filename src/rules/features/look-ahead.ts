import { derived } from '../judging/value.ts';
import { NOTHING } from './finding.ts';
import { defineFeature } from './rule.ts';

const CONTOUR = {
  tolerance: 0.5,
  motion: 'surfaces',
  contour: { feed: 2400, radius: 25, chordError: 0.002 },
} as const;
const BLOCKS = { lookAhead: 1200, aheadWithLookAhead: 400 } as const;

/** Blocks that the path asks for in a second, or within its stopping distance, against the control as it comes. */
export const lookAhead = defineFeature({
  id: 'lookAhead',
  offer: 'lookAhead',
  unit: '',
  find: (of) => {
    const all = of
      .outcomesOf('look-ahead')
      .filter(({ outcome }) => outcome.comparison !== null)
      .toSorted((a, b) => a.outcome.relativeMargin.low - b.outcome.relativeMargin.low);
    const asking = all.filter(({ outcome }) => outcome.easing === 'look-ahead');
    const [worst] = asking.length > 0 ? asking : all;
    if (worst === undefined)
      return {
        need: 'not needed',
        sure: true,
        why: 'no-contours',
        number: NOTHING,
        limit: NOTHING,
        parts: [],
        hours: null,
      };
    const { need, have, hangsOn, comparison } = worst.outcome;
    const isAhead = comparison?.unit === 'blocks';
    return {
      need: asking.length > 0 ? 'required' : 'not needed',
      sure: asking.length === 0 || asking.some(({ outcome }) => !outcome.mayHoldPlainly),
      why: asking.length === 0 ? 'control-keeps-up' : isAhead ? 'blocks-ahead-too-few' : 'blocks-too-slow',
      number: derived(need, 'blocks', hangsOn),
      limit: derived(have, 'blocks of the control', hangsOn),
      parts: asking.map(({ name }) => name),
      hours: null,
    };
  },
  source: 'geometry of the chord; kinematics',
  examples: [
    {
      what: '63 blocks a second on a control for 50',
      given: {
        parts: [CONTOUR],
        machines: [{ acceleration: 2, blocks: { standard: 50, ahead: 2, ...BLOCKS } }],
      },
      need: 'required',
      number: 63.2456,
    },
    {
      what: 'on a control for 64',
      given: {
        parts: [CONTOUR],
        machines: [{ acceleration: 2, blocks: { standard: 64, ahead: 2, ...BLOCKS } }],
      },
      need: 'not needed',
    },
    { what: 'no contours at all', given: { parts: [{ tolerance: 0.5 }] }, need: 'not needed' },
  ],
});
