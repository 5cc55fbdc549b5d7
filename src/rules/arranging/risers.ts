import type { Case } from '../judging/case.ts';
import { evaluateSide, least } from '../judging/side.ts';
import { isUpright } from '../sides/base.ts';
import { endOf } from '../sides/boxes/index.ts';
import { noseAtBottom } from '../sides/nose.ts';
import { sweptDepths, turningRadii } from '../sides/profile.ts';
import { TIP_REACH, travelBeside } from '../sides/travel.ts';

const spindleDown = travelBeside('y', 'low');
const lowestTip = least(['part', 'rotary'], endOf('wLow'));
const lowestSwept = least(['part', 'rotary'], sweptDepths);
const widest = { of: ['part', 'rotary'], fold: 'greatest', terms: turningRadii } as const;

/**
 * Thickness of the riser under the rotary that a part needs, mm, as it is set up without plates: the nose
 * comes too little down for the longest tool, the work swings into the table, or a level axis is too low. Under an upright one
 * where the spindle does not come down to the work.
 * Nothing where none is needed. Rounded up to the step in which risers come.
 */
export function risersFor(of: Case): readonly number[] {
  if (isUpright(of))
    return inSteps([evaluateSide(TIP_REACH.y.low, of).high - evaluateSide(spindleDown, of).low], of);
  const { assume, toolLongest } = of.shop;
  const center = of.rotary.centerHeight.low;
  const short = [
    evaluateSide(noseAtBottom, of).high - evaluateSide(lowestTip, of).low - toolLongest.low,
    of.rotary.axes === 2
      ? assume.clearGap - evaluateSide(lowestSwept, of).low - center
      : evaluateSide(widest, of).high + assume.swingGap - center,
  ];
  return inSteps(short, of);
}

const inSteps = (short: readonly number[], { shop: { assume } }: Case): readonly number[] =>
  short
    .filter((length) => Number.isFinite(length) && length > 1e-9 && length <= THICKEST)
    .map((length) => Math.ceil(length / assume.riserStep - 1e-9) * assume.riserStep);

/** A riser higher than this is a pedestal, not a plate (common practice, no source). */
export const THICKEST = 250;
