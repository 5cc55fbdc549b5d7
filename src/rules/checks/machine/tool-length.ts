import { partInput } from '../../inputs/input.ts';
import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { assume, tools } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck, type EasingRule } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { falls, rises, type Term, term } from '../../judging/term.ts';
import { noseAtTop } from '../../sides/nose.ts';
import { theInput } from '../../sides/single.ts';
import { type Face, facesOf } from '../../sides/stack.ts';

const near = {
  low: falls(part.lowestSideFeature),
  nose: rises(machine.noseDiameter),
  gap: rises(assume.clearGap),
};
const tip = (face: Face) => ({
  d: falls(face.across),
  e: rises(part.eccentricity),
  depth: rises(part.depthSide),
});
type Tip = Readonly<Record<'d' | 'e' | 'depth', number>>;
const tipHeight = ({ d, e, depth }: Tip): number => d / 2 - e - depth;

/** Over the edge of the faceplate, where the nose comes nearer to it than half its width and a gap. */
const overFaceplate = (face: Face): Term =>
  term(
    `faceplate beside the ${face.name}`,
    {
      ...near,
      ...tip(face),
      f: falls(part.fixtureHeight),
      P: rises(rotary.faceplate),
    },
    (of) => (of.f + of.low < of.nose / 2 + of.gap ? Math.max(0, of.P / 2 + of.gap - tipHeight(of)) : 0),
  );

const overFixture = (face: Face): Term =>
  term(`fixture beside the ${face.name}`, { ...near, ...tip(face), F: rises(part.fixtureDiameter) }, (of) =>
    of.low < of.nose / 2 + of.gap ? Math.max(0, of.F / 2 + of.gap - tipHeight(of)) : 0,
  );

const facesReached = (of: Case): readonly Face[] =>
  of.part?.approaches.some((each) => each.kind === 'sides' || each.kind === 'around') ? facesOf(of) : [];

const ROOMS = ['part', 'rotary', 'machine'] as const;
const gaugeLength = greatest(ROOMS, (of) =>
  facesReached(of).flatMap((face) =>
    of.rotary.hasFaceplate ? [overFaceplate(face), overFixture(face)] : [overFixture(face)],
  ),
);

/** Where the nose has to be with a tool just long enough to pass the edge. */
const noseOverEdge = greatest(['part', 'rotary'], (of) => {
  const above = { gap: rises(assume.clearGap), c: rises(assume.approach) };
  const fixture = term(
    'over the fixture',
    { F: rises(part.fixtureDiameter), ...above },
    (v) => v.F / 2 + v.gap + v.c,
  );
  const plate = term(
    'over the faceplate',
    { P: rises(rotary.faceplate), ...above },
    (v) => v.P / 2 + v.gap + v.c,
  );
  return of.rotary.hasFaceplate ? [fixture, plate] : [fixture];
});

/** A fixture so high that the nose passes the faceplate; the fixture's own edge it does not help. */
const fixtureForNose = greatest(ROOMS, () => [
  term('height of the fixture', near, (of) => Math.max(0, of.nose / 2 + of.gap - of.low)),
]);
const fixtureEdgeOnly = greatest(ROOMS, (of) => facesReached(of).map(overFixture));

const hasUndercut = (of: Case): boolean =>
  of.part?.approaches.some((each) => each.kind === 'undercut') ?? false;

/** From below the level: the tool's flank over the edge of the faceplate. */
const fixtureForUndercut = greatest(['part', 'rotary'], (of) =>
  (of.part?.approaches ?? []).flatMap((approach) => {
    if (approach.kind !== 'undercut') return [];
    const angle = partInput('undercut angle', '°', [91, 150], () => approach.angle);
    return facesOf(of).map((face) =>
      term(
        'undercut over the faceplate',
        {
          d: falls(face.across),
          low: falls(part.lowestSideFeature),
          P: rises(rotary.faceplate),
          gap: rises(assume.clearGap),
          D: rises(tools.largestCutter),
          angle: rises(angle),
        },
        (values) => heightForUndercut(values),
      ),
    );
  }),
);

type Undercut = Readonly<Record<'d' | 'low' | 'P' | 'gap' | 'D' | 'angle', number>>;

/** (P/2 + gap − q)·tan β + D/(2·cos β) − lowest feature; nothing where the part stands over the edge. */
function heightForUndercut({ d, low, P, gap, D, angle }: Undercut): number {
  const out = P / 2 + gap - d / 2;
  if (out <= 0) return 0;
  const beta = ((angle - 90) * Math.PI) / 180;
  return Math.max(0, out * Math.tan(beta) + D / (2 * Math.cos(beta)) - low);
}

/** A fixture so high that the nose passes the faceplate, and an undercut too where there is one. */
const fixtureForBoth = greatest(ROOMS, (of) => [
  ...fixtureForNose.terms(of),
  ...(hasUndercut(of) ? fixtureForUndercut.terms(of) : []),
]);

const raiseFixture = (when: (of: Case) => boolean): EasingRule => ({
  measure: 'raise-fixture',
  when: (of) => of.rotary.hasFaceplate && when(of),
  all: [{ need: fixtureEdgeOnly, have: theInput([], tools.longest) }],
  amount: fixtureForBoth,
});

const buyLongerTool: EasingRule = {
  measure: 'buy-longer-tool',
  all: [
    { need: gaugeLength, have: theInput([], assume.longestTool) },
    { need: noseOverEdge, have: noseAtTop },
  ],
  amount: gaugeLength,
};

const PART = {
  size: [60, 60, 60],
  depthSide: 10,
  approaches: ['sides'],
} as const;

export const toolLength = defineCheck({
  id: 'tool-length',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'gauge length beside the faceplate',
      when: (of) => facesReached(of).length > 0,
      need: gaugeLength,
      have: theInput([], tools.longest),
      // an undercut wants the fixture raised anyway, so that is looked at first
      easings: [raiseFixture(hasUndercut), buyLongerTool, raiseFixture((of) => !hasUndercut(of))],
    },
    {
      what: 'height of the fixture for an undercut',
      when: (of) => of.rotary.axes === 2 && hasUndercut(of) && of.rotary.hasFaceplate,
      need: fixtureForUndercut,
      have: theInput(['part'], part.fixtureHeight),
      easings: [{ measure: 'raise-fixture', all: [], amount: fixtureForUndercut }],
      secondary: true,
    },
  ],
  formula:
    'faceplate/2 + gap − (q − e − depth) ≤ longest tool, where fixture + lowest feature < nose/2 + gap; undercut: (P/2 + gap − q)·tan β + D/(2·cos β) − lowest feature ≤ fixture height',
  source: 'geometry; common practice, no source',
  remedies: ['longer-tools', 'raise-fixture'],
  examples: [
    {
      what: 'low over a 250 mm faceplate: 125 + 10 − (30 − 10) mm',
      given: {
        part: {
          ...PART,
          lowestSideFeature: 0,
          holding: { diameter: 60, height: 20 },
        },
        rotary: { faceplate: 250 },
        machine: { noseDiameter: 90 },
        tools: { longest: 115 },
      },
      verdict: 'holds',
      need: 115,
      have: 115,
    },
    {
      what: 'a tool too short, and longer ones to be had',
      given: {
        part: {
          ...PART,
          lowestSideFeature: 0,
          holding: { diameter: 60, height: 20 },
        },
        rotary: { faceplate: 250 },
        machine: { noseDiameter: 90 },
        tools: { longest: 100 },
      },
      verdict: 'holds if',
      need: 115,
      have: 100,
    },
    {
      what: 'a fixture so wide that no ordinary tool passes its edge',
      given: {
        part: {
          ...PART,
          lowestSideFeature: 0,
          holding: { diameter: 640, height: 60 },
        },
        rotary: { faceplate: 250 },
        machine: { noseDiameter: 90 },
        tools: { longest: 180 },
      },
      verdict: 'fails',
      need: 310,
      have: 180,
    },
    {
      what: 'an undercut of 100° over a 250 mm faceplate wants its fixture raised',
      given: {
        part: {
          ...PART,
          approaches: [{ undercut: 100 }],
          lowestSideFeature: 10,
          holding: { diameter: 60, height: 10 },
        },
        rotary: { faceplate: 250 },
        tools: { longest: 180, largestCutter: 20 },
      },
      verdict: 'holds if',
      need: 18.6685,
      have: 10,
    },
    {
      what: 'a lowest feature that is not known, on a wide fixture',
      given: {
        part: {
          ...PART,
          lowestSideFeature: 'unknown',
          holding: { diameter: 640, height: 60 },
        },
        rotary: { faceplate: 250 },
        machine: { noseDiameter: 90 },
        tools: { longest: 180 },
      },
      verdict: 'open',
    },
  ],
});
