import { caseInput } from '../../inputs/input.ts';
import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { assume } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck } from '../../judging/check.ts';
import { width } from '../../judging/side.ts';
import { extended, type Input, rises, type Term, term } from '../../judging/term.ts';
import { known } from '../../judging/value.ts';
import { alongX, baseEnds, onHorizontal } from '../../sides/base.ts';
import { tipEnds, turnedRound } from '../../sides/extent.ts';
import { housingEnds } from '../../sides/housing.ts';
import { sweptAway, sweptToward, turningRadii } from '../../sides/profile.ts';
import { theInput } from '../../sides/single.ts';

/** How far the swept work comes to the rear of the rotary center. */
function workBehind(of: Case): readonly Term[] {
  if (of.rotary.axes === 2 && alongX(of)) return turnedRound(of) ? sweptToward(of) : sweptAway(of);
  if (of.rotary.axes === 2 || alongX(of)) return turningRadii(of);
  const uses = { f: rises(part.fixtureHeight), h: rises(part.height) };
  return of.place.turned ? [] : [term('far end of the part', uses, (values) => values.f + values.h)];
}

/**
 * Plugs and hoses leave from the housing, not from a bare end of the base. Where the catalog draws no housing
 * they may leave from anywhere, so behind the base.
 */
function behind(of: Case): readonly Term[] {
  if (of.machine.builtIn) return workBehind(of);
  const base = baseEnds(of, 'y').high;
  const housing = housingBehind(of);
  if (housing.length === 0) return [...workBehind(of), withConnectors(base, 'base and connectors')];
  const connectors = housing.map((each) => withConnectors(each, 'housing and connectors'));
  return [...workBehind(of), { ...base, name: 'base' }, ...connectors];
}

const withConnectors = (rear: Term, name: string): Term => ({
  ...extended(rear, { room: rises(assume.connectorRoom) }, (end, values) => end + values.room),
  name,
});

/** Where the boxes of the housing end to the rear of the rotary center. */
function housingBehind({ rotary, mounting }: Case): readonly Term[] {
  if (mounting === 'built-in') return [];
  return Array.from({ length: rotary.row?.housing?.length ?? 0 }, (_, at) =>
    term('housing', { end: rises(rearOfHousing(at)) }, (values) => values.end),
  );
}

const rearOfHousing = (at: number): Input =>
  caseInput('rear end of the housing', 'mm', [-900, 900], ({ rotary, mounting, place }) => {
    const box = rotary.row?.housing?.[at];
    if (box === undefined || mounting === 'built-in') throw new Error(`there is no housing ${at}`);
    const [, rear] = housingEnds(box, { mounting, turned: place.turned }, 'y');
    return known(rear, `rotaries[${rotary.key}].housing[${at}]`);
  });

export const column = defineCheck({
  id: 'column',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  // on a horizontal spindle Y is upright, and no column stands at its end
  applies: (of) => !onHorizontal(of),
  comparisons: [
    {
      what: 'what stands behind the spindle over the foremost tip',
      need: width(['part', 'rotary', 'mounting', 'turn'], behind, (of) => tipEnds(of, 'y').low),
      have: theInput(['machine'], machine.throat),
    },
  ],
  formula: 'rearmost of swept work, base, and housing + connectors − foremost tip ≤ spindle axis to column',
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
      what: 'the bare end of the base to the rear: no connectors there',
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
          base: { along: 420, centerAlong: 140 },
          housing: [{ along: [-140, -70], across: [-130, 130], top: 150 }],
        },
        machine: { throat: 330 },
        mounting: 'tilt-along-y',
      },
      verdict: 'holds',
      need: 330,
      have: 330,
    },
    {
      what: 'the same turned end for end: housing and connectors to the rear',
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
          base: { along: 420, centerAlong: 140 },
          housing: [{ along: [-140, -70], across: [-130, 130], top: 150 }],
        },
        machine: { throat: 330 },
        mounting: 'tilt-along-y',
        place: { turned: true },
      },
      verdict: 'fails',
      need: 340,
      have: 330,
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
