import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { assume } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck } from '../../judging/check.ts';
import { width } from '../../judging/side.ts';
import { extended, rises, type Term, term } from '../../judging/term.ts';
import { alongX, baseEnds } from '../../sides/base.ts';
import { tipEnds, turnedRound } from '../../sides/extent.ts';
import { sweptAway, sweptToward, turningRadii } from '../../sides/profile.ts';
import { theInput } from '../../sides/single.ts';

/** How far the swept work comes to the rear of the rotary center. */
function workBehind(of: Case): readonly Term[] {
  if (of.rotary.axes === 2 && alongX(of)) return turnedRound(of) ? sweptToward(of) : sweptAway(of);
  if (of.rotary.axes === 2 || alongX(of)) return turningRadii(of);
  const uses = { f: rises(part.fixtureHeight), h: rises(part.height) };
  return of.place.turned ? [] : [term('far end of the part', uses, (values) => values.f + values.h)];
}

function behind(of: Case): readonly Term[] {
  if (of.machine.builtIn) return workBehind(of);
  const connectors = extended(
    baseEnds(of, 'y').high,
    { room: rises(assume.connectorRoom) },
    (rear, values) => rear + values.room,
  );
  return [...workBehind(of), { ...connectors, name: 'base and connectors' }];
}

export const column = defineCheck({
  id: 'column',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'what stands behind the spindle over the foremost tip',
      need: width(['part', 'rotary', 'mounting', 'turn'], behind, (of) => tipEnds(of, 'y').low),
      have: theInput(['machine'], machine.throat),
    },
  ],
  formula: 'rearmost of swept work, and base + connectors − foremost tip ≤ spindle axis to column',
  source: 'geometry; common practice, no source',
  remedies: ['larger-machine', 'other-mounting', 'smaller-part'],
  examples: [
    {
      what: 'sides 120 mm to the front, the base 130 + 150 mm to the rear',
      given: {
        part: {
          size: [60, 80, 60],
          approaches: ['sides'],
          holding: { diameter: 60, height: 40 },
        },
        tools: { largestCutter: 20 },
        rotary: {
          faceplate: 100,
          faceOffset: 10,
          base: { across: 260, centerAcross: 130 },
        },
        machine: { throat: 400 },
        mounting: 'tilt-along-x',
      },
      verdict: 'holds',
      need: 400,
      have: 400,
    },
    {
      what: 'a shallow machine',
      given: {
        part: {
          size: [60, 80, 60],
          approaches: ['sides'],
          holding: { diameter: 60, height: 40 },
        },
        tools: { largestCutter: 20 },
        rotary: {
          faceplate: 100,
          faceOffset: 10,
          base: { across: 260, centerAcross: 130 },
        },
        machine: { throat: 380 },
        mounting: 'tilt-along-x',
      },
      verdict: 'fails',
      need: 400,
      have: 380,
    },
    {
      what: 'a throat that the catalog leaves out',
      given: { machine: { throat: 'unknown' } },
      verdict: 'open',
    },
  ],
});
