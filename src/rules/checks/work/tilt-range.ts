import { fixed } from '../../inputs/input.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck } from '../../judging/check.ts';
import { needsInput, theInput } from '../../sides/single.ts';

/** On a level axis only the sides around it are reached, whatever the angle. */
const onlyAround = (of: Case): boolean =>
  of.part?.approaches.every((each) => each.kind === 'around' || each.kind === 'sides') ?? true;

const angle = needsInput(['part'], part.tilt);

export const tiltRange = defineCheck({
  id: 'tilt-range',
  stage: 'rotary-class',
  about: 'part',
  unit: '°',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'greatest polar angle',
      when: (of) => of.rotary.axes === 2,
      need: angle,
      have: theInput(['rotary'], rotary.tiltGreatest),
    },
    {
      what: 'sides around one level axis',
      when: (of) => of.rotary.axes === 1 && onlyAround(of),
      need: angle,
      have: theInput([], fixed('sides around the axis', 90)),
    },
    {
      what: 'a side that one level axis never turns to the tool',
      unit: 'axes',
      when: (of) => of.rotary.axes === 1 && !onlyAround(of),
      need: theInput([], fixed('two axes', 2)),
      have: theInput([], fixed('one axis', 1)),
    },
  ],
  categorical: true,
  formula:
    'greatest polar angle of the approaches ≤ greatest tilt to either side; one axis reaches only the sides around it',
  source: 'geometry; common practice, no source',
  remedies: ['more-tilt', 'other-class'],
  examples: [
    {
      what: 'five sides on a table that tilts to 110°',
      given: {
        part: { approaches: ['top', 'sides'] },
        rotary: { tilt: [-20, 110] },
      },
      verdict: 'holds',
      need: 90,
      have: 110,
    },
    {
      what: 'the greatest tilt may lie to either side',
      given: {
        part: { approaches: ['top', { undercut: 100 }] },
        rotary: { tilt: [-105, 30] },
      },
      verdict: 'holds',
      need: 100,
      have: 105,
    },
    {
      what: 'an undercut beyond the tilt',
      given: {
        part: { approaches: ['top', { undercut: 115 }] },
        rotary: { tilt: [-20, 110] },
      },
      verdict: 'fails',
      need: 115,
      have: 110,
    },
    {
      what: 'the top cannot be reached on one level axis',
      given: {
        part: { approaches: ['top', 'sides'] },
        rotary: { class: 'single-axis' },
        mounting: 'axis-along-x',
      },
      verdict: 'fails',
      need: 2,
      have: 1,
    },
    {
      what: 'an undercut angle that is not known',
      given: {
        part: { approaches: ['top', { undercut: [95, 115] }] },
        rotary: { tilt: [-20, 110] },
      },
      verdict: 'open',
    },
  ],
});
