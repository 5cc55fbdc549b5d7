import type { MeasureToTake } from '../decision.ts';
import { evaluateSide } from '../judging/side.ts';
import { derived, type Value } from '../judging/value.ts';
import { most, NOTHING } from './finding.ts';
import { defineFeature, type FeatureGround } from './rule.ts';

/** Families that hold only with such a tool, and its length. */
function asking({ outcomesOf }: FeatureGround, measure: MeasureToTake) {
  const found = (['reach-low', 'tool-length'] as const)
    .flatMap(outcomesOf)
    .filter(({ outcome }) => outcome.easing === measure);
  const lengths = found.flatMap(({ outcome }): readonly Value[] =>
    outcome.easingRule?.amount === undefined
      ? []
      : [derived(evaluateSide(outcome.easingRule.amount, outcome.of), 'tool', outcome.hangsOn)],
  );
  return {
    parts: [...new Set(found.map(({ name }) => name))],
    length: most(lengths, 'tool'),
    sure: found.some(({ outcome }) => !outcome.mayHoldPlainly),
  };
}

/** Tools long enough to come past faceplate and fixture. */
export const longHolders = defineFeature({
  id: 'longHolders',
  offer: null,
  unit: 'mm',
  find: (of) => {
    const limit = of.shop.toolLongest;
    const bought = asking(of, 'buy-longer-tool');
    if (bought.parts.length > 0)
      return {
        need: 'required',
        sure: bought.sure,
        why: 'tool-too-short',
        number: bought.length,
        limit,
        parts: bought.parts,
        hours: null,
      };
    const there = asking(of, 'longer-tool-there');
    return {
      need: there.parts.length > 0 ? 'worth having' : 'not needed',
      sure: there.sure || there.parts.length === 0,
      why: there.parts.length > 0 ? 'long-tool-in-use' : 'tools-reach',
      number: there.parts.length > 0 ? there.length : NOTHING,
      limit,
      parts: there.parts,
      hours: null,
    };
  },
  source: 'the checks of reach downward and of tool length',
  examples: [
    {
      what: 'sides cut close to a wide faceplate',
      given: {
        parts: [
          { tolerance: 0.5, lowestSideFeature: 0, holding: { height: 20, diameter: 60 }, depthSide: 40 },
        ],
        rotaries: [{ faceplate: 400, swing: 450 }],
      },
      need: 'required',
    },
    {
      what: 'a fixture that stands high enough',
      given: {
        parts: [
          { tolerance: 0.5, lowestSideFeature: 30, holding: { height: 60, diameter: 60 }, depthSide: 20 },
        ],
      },
      need: 'not needed',
    },
  ],
});
