import type { HousingBox } from '../../../catalog/catalog.ts';
import { anything, type Interval } from '../../../quantities/interval.ts';
import { caseInput } from '../../inputs/input.ts';
import { rotary } from '../../inputs/rotary.ts';
import { assume, tools } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { type Comparison, defineCheck, type Meets } from '../../judging/check.ts';
import { evaluateTerm, folded, greatest, least } from '../../judging/side.ts';
import { extended, falls, rises, type Term, term } from '../../judging/term.ts';
import { known, stated } from '../../judging/value.ts';
import { onHorizontal } from '../../sides/base.ts';
import { type BoxTerms, boxesOf } from '../../sides/boxes/index.ts';

const ALL_ENDS = ['uLow', 'uHigh', 'vLow', 'vHigh'] as const;

/** Whether the nose, over any tip of this box, stands over this housing: in plan, as intervals. */
function meets(of: Case, tips: BoxTerms, housing: HousingBox): Meets {
  const nose = of.machine.noseDiameter;
  const ends = (fold: 'greatest' | 'least', terms: readonly Term[]): Interval =>
    folded(
      fold,
      terms.map((each) => evaluateTerm(each, of)),
    );
  const over = (low: Interval, high: Interval, [from, to]: HousingBox['along']) => ({
    surely: low.high < to + nose.low / 2 && high.low > from - nose.low / 2,
    perhaps: low.low < to + nose.high / 2 && high.high > from - nose.high / 2,
  });
  const on = [
    nose,
    ...ALL_ENDS.flatMap((end) => tips[end].flatMap((each) => Object.values(evaluateTerm(each, of).values))),
  ];
  const along = over(ends('least', tips.uLow), ends('greatest', tips.uHigh), housing.along);
  const across = over(ends('least', tips.vLow), ends('greatest', tips.vHigh), housing.across);
  if (along.surely && across.surely) return { is: 'yes', on: [] };
  return {
    is: along.perhaps && across.perhaps ? 'perhaps' : 'no',
    on: on.filter(({ low, high }) => low !== high),
  };
}

function overHousing(of: Case, tips: BoxTerms, housing: HousingBox, at: number): Comparison {
  const top = caseInput('top of the housing', 'mm', [0, 900], () =>
    known(housing.top, `rotaries[${of.rotary.key}].housing[${at}].top`),
  );
  return {
    what: `${tips.name} over housing ${at + 1}`,
    meets: (each) => meets(each, tips, housing),
    need: greatest(null, () => [
      term(
        `housing below ${tips.name}`,
        {
          top: rises(top),
          center: falls(rotary.centerHeight),
          gap: rises(assume.clearGap),
        },
        (values) => values.top - values.center + values.gap,
      ),
    ]),
    have: least(null, () =>
      tips.wLow.map((tip) =>
        extended(tip, { L: rises(tools.longest) }, (height, values) => height + values.L),
      ),
    ),
  };
}

const outline = caseInput('outline of the housing', 'mm', [0, 900], (of) =>
  stated('unknown', `rotaries[${of.rotary.key}].housing`, anything, false),
);

const NO_OUTLINE: Comparison = {
  what: 'no outline of the housing is published',
  need: greatest(null, () => [term('housing', { outline: rises(outline) }, (of) => of.outline)]),
  have: least(null, () => [term('longest tool', { L: rises(tools.longest) }, (of) => of.L)]),
};

const HOUSING = [{ along: [-140, -70], across: [-130, 130], top: 150 }] as const;
const PART = {
  size: [90, 60, 60],
  holding: { diameter: 100, height: 40 },
  depthSide: 20,
  depthTop: 0,
} as const;

export const housingClear = defineCheck({
  id: 'housing-clear',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  // outlines are drawn of a rotary on its base: one on its back is another, and hangs below its faceplate
  applies: (of) => of.rotary.row !== null && !onHorizontal(of),
  comparisons: (of) => {
    const housing = of.rotary.row?.housing;
    if (housing == null) return [NO_OUTLINE];
    return boxesOf(of).flatMap((tips) => housing.map((box, at) => overHousing(of, tips, box, at)));
  },
  advisory: (of) => of.rotary.row?.housing === null,
  formula:
    'top of the housing − center height + gap ≤ least tip + longest tool, where the nose stands over the housing',
  source: 'geometry; common practice, no source',
  remedies: ['longer-tools', 'raise-fixture', 'ask-the-seller'],
  examples: [
    {
      what: 'the nose over a housing as high as the axis: 10 mm against a tip at 10 mm and a 180 mm tool',
      given: {
        part: PART,
        rotary: { centerHeight: 150, faceOffset: 10, housing: HOUSING },
        machine: { noseDiameter: 90 },
        tools: { longest: 180, largestCutter: 20 },
      },
      verdict: 'holds',
      need: 10,
      have: 190,
    },
    {
      what: 'a housing as high as the tool is long',
      given: {
        part: PART,
        rotary: {
          centerHeight: 150,
          faceOffset: 10,
          housing: [{ ...HOUSING[0], top: 340 }],
        },
        machine: { noseDiameter: 90 },
        tools: { longest: 180, largestCutter: 20 },
      },
      verdict: 'fails',
      need: 200,
      have: 190,
    },
    {
      what: 'no outline is published: the seller is asked',
      given: { rotary: { housing: null } },
      verdict: 'open',
    },
  ],
});
