import { MATERIALS } from '../../mechanics/forces/materials.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import type { FeatureGround } from '../../rules/features/rule.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { known } from '../../rules/judging/value.ts';
import { workedOutcome } from '../examples/worked-check.ts';
import { step } from '../formula/formula-source.ts';
import { chips, coolant } from './chip-ways.ts';
import { type FeatureWay, lineWords, words } from './feature-way.ts';
import { countsGiven, hourGiven } from './needed-way.ts';
import { type Minutes, savingWay } from './saving-way.ts';
import { tiltAsked } from './sizes.ts';
import { given, joined, line, numbers, type Stretch, stretchOf, yesOrNo } from './stretch.ts';

const NOTHING = line('L', '', 'nothing', '0');

const axisDrives: FeatureWay = ({ machine, rotary }, need) => {
  const axes = known(rotary.axes, `rotaries[${rotary.key}].axes`);
  return numbers(
    given('N', '', words(need), axes),
    given('L', '', lineWords(need), machine.builtIn ? axes : machine.drivesFitted),
  );
};

/** Hours a year of the families of which something is so. */
const hoursOf =
  (counts: (of: FeatureGround['covered'][number]['family'], ground: FeatureGround) => boolean): FeatureWay =>
  (of, need) =>
    joined(
      {
        given: of.covered.flatMap(({ family }, index) => [
          hourGiven(family, index),
          countsGiven(family, index, counts(family, of)),
        ]),
        steps: [
          step(
            'N',
            'h',
            words(need),
            of.covered.map((_, index) => `k${index + 1}*h${index + 1}`).join(' + ') || '0',
          ),
        ],
      },
      NOTHING,
    );

/** How far off the axis anything is that is loaded by hand. */
const offCenter: FeatureWay = (of, need) =>
  joined(
    {
      given: [
        yesOrNo('b', 'loaded by hand', of.answers.work.loading === 'by-hand', 'work.byHand'),
        ...of.covered.flatMap(({ family }, index) => {
          const [first] = family.cases;
          return first === undefined
            ? []
            : [
                given(
                  `e${index + 1}`,
                  'mm',
                  `how far it stands off the rotary axis: ${family.name}`,
                  first.eccentricity,
                ),
              ];
        }),
      ],
      steps: [
        step(
          'N',
          'mm',
          words(need),
          `b*max(${['0', ...of.covered.map((_, index) => `e${index + 1}`)].join(', ')})`,
        ),
      ],
    },
    NOTHING,
  );

/** Need and have of the check that asks for it, of the family that has least to spare. */
const ofCheck =
  (check: CheckId, asks: string): FeatureWay =>
  (of, need) => {
    const all = of.outcomesOf(check).filter(({ outcome }) => outcome.comparison !== null);
    const asking = all.filter(({ outcome }) => outcome.easing === asks);
    const margin = ({ outcome }: { readonly outcome: Outcome }): number => outcome.relativeMargin.low;
    const [worst] = (asking.length > 0 ? asking : all).toSorted((a, b) => margin(a) - margin(b));
    const worked = worst === undefined ? null : workedOutcome(worst.outcome, of.partOf(worst.name));
    if (worked === null) return null;
    const { formula } = worked;
    const under = (gives: string, from: string, what: string): Stretch =>
      // under its own name it is there already
      gives === from ? numbers() : line(gives, formula.unit, what, from);
    return joined(
      stretchOf(worked),
      under('N', formula.need, words(need)),
      under('L', formula.have, lineWords(need)),
    );
  };

const saving =
  (minutes: Minutes, number: FeatureWay | null = null): FeatureWay =>
  (of, need) => {
    const before = number === null ? null : number(of, need);
    const saves = savingWay(of, need, minutes);
    return before === null ? saves : joined(before, saves);
  };

const camPost: FeatureWay = ({ rotary, covered, partOf }, need) => {
  if (rotary.axes === 1) return joined(line('N', '°', words(need), '0'), NOTHING);
  const tilts = covered.map(({ family: { name } }, index) => tiltAsked(partOf(name), 't', index + 1));
  const greatest = `max(${['0', ...covered.map((_, index) => `t${index + 1}`)].join(', ')})`;
  return joined(...tilts, line('N', '°', words(need), greatest), NOTHING);
};

/** How each feature comes to its number and its line, and what it saves. A new id does not compile without. */
export const FEATURE_WAYS: Readonly<Record<FeatureId, FeatureWay>> = {
  axisDrives,
  toolCenterPoint: hoursOf(({ cases }) => cases.every(({ motion }) => motion === 'simultaneous')),
  rotatingWorkOffset: saving(['offsetMinutes'], offCenter),
  tiltedWorkPlane: offCenter,
  spindleProbe: saving(['probeMinutes'], ofCheck('index-accuracy', 'spindle-probe')),
  toolSetter: saving(['setterMinutes', 'toolsPerSetup']),
  lookAhead: ofCheck('look-ahead', 'look-ahead'),
  camPost,
  longHolders: ofCheck('tool-length', 'buy-longer-tool'),
  throughSpindleCoolant: coolant,
  chipConveying: chips,
  mistAndFire: hoursOf(({ name }, { partOf }) => {
    const { material } = partOf(name);
    return material !== 'unknown' && MATERIALS[material].combustible;
  }),
};
