import type { CheckId } from '../checks/ids.ts';
import { derived, known, type Value } from '../judging/value.ts';
import { above, hoursSaved, NOTHING } from './finding.ts';
import { defineFeature, type FeatureFound, type FeatureGround } from './rule.ts';

/** Eccentricity of the parts that are loaded by hand off the axis, as the check of that feature says. */
function offCenter({ outcomesOf, partOf }: FeatureGround, check: CheckId): { value: Value; parts: string[] } {
  const asking = outcomesOf(check).filter(({ outcome }) => outcome.need.high >= 1);
  const eccentric = asking.map(({ name, outcome }) => {
    const of = outcome.of.part?.eccentricity ?? known(0, `parts[${partOf(name).name}].eccentricity`);
    return derived({ low: outcome.need.low >= 1 ? of.low : 0, high: of.high }, 'off the axis', [
      of,
      ...outcome.hangsOn,
    ]);
  });
  const end = (which: 'low' | 'high'): number => Math.max(0, ...eccentric.map((each) => each[which]));
  return {
    value: derived({ low: end('low'), high: end('high') }, 'off the axis', eccentric),
    parts: asking.map(({ name }) => name),
  };
}

const OFF = { eccentricity: 20, tolerance: 0.5 } as const;
const ON = { eccentricity: 0, tolerance: 0.5 } as const;
const BY_HAND = { loading: 'by-hand' } as const;
const SOURCE = 'common practice, no source; minutes at each setup are an assumption';

/** Positional work whose zero turns with the table: needed off the axis, handy at every setup. */
export const rotatingWorkOffset = defineFeature({
  id: 'rotatingWorkOffset',
  offer: 'rotatingWorkOffset',
  unit: 'mm',
  find: (of): FeatureFound => {
    const { value, parts } = offCenter(of, 'rotating-work-offset');
    const hours = hoursSaved(of.setups, of.shop.assume.offsetMinutes, 'hours at setups');
    return above(
      value,
      NOTHING,
      { need: 'required', why: 'loaded-off-center', parts },
      { need: 'saves', why: 'saves-at-setups', hours },
    );
  },
  source: SOURCE,
  examples: [
    {
      what: 'loaded by hand 20 mm off the axis',
      given: { parts: [OFF], work: BY_HAND },
      need: 'required',
      number: 20,
    },
    {
      what: 'on the axis, 12 setups a year save 15 min each: 3 h at 70 in 5 years are less than it costs',
      given: { parts: [ON], work: BY_HAND },
      need: 'worth having',
      number: 0,
    },
    {
      what: 'with 60 lots a year they are more',
      given: { parts: [{ ...ON, yearly: { lots: 60 } }], work: BY_HAND },
      need: 'pays for itself',
      number: 0,
    },
    {
      what: 'nobody says what an hour is worth',
      given: { parts: [{ ...ON, yearly: { lots: 60 } }], work: BY_HAND, money: { shopRate: 'unknown' } },
      need: 'worth having',
    },
  ],
});

export const tiltedWorkPlane = defineFeature({
  id: 'tiltedWorkPlane',
  offer: 'tiltedWorkPlane',
  unit: 'mm',
  find: (of): FeatureFound => {
    const { value, parts } = offCenter(of, 'tilted-work-plane');
    const under =
      of.rotary.axes === 1
        ? ({ need: 'not needed', why: 'one-axis-only' } as const)
        : ({ need: 'worth having', why: 'goes-with-work-offset' } as const);
    return above(value, NOTHING, { need: 'required', why: 'loaded-off-center', parts }, under);
  },
  source: SOURCE,
  examples: [
    {
      what: 'loaded by hand 20 mm off the axis',
      given: { parts: [OFF], work: BY_HAND },
      need: 'required',
      number: 20,
    },
    { what: 'on the axis', given: { parts: [ON], work: BY_HAND }, need: 'worth having', number: 0 },
    {
      what: 'on a single axis',
      given: { parts: [{ ...ON, approaches: ['around'] }], rotaries: [{ class: 'single-axis', tilt: null }] },
      need: 'not needed',
    },
  ],
});
