import { lightestLift } from '../../rules/classes/lightest-lift.ts';
import type { ClassRule } from '../../rules/classes/rule.ts';
import { known } from '../../rules/judging/value.ts';
import type { Judged } from '../../rules/weighing/judged.ts';
import { shownItems } from '../../rules/weighing/price.ts';
import { workedOutcome } from '../examples/worked-check.ts';
import { step } from '../formula/formula-source.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { priceLines } from '../worksheets/measure-formula.ts';
import { visesFormula } from '../worksheets/vises-formula.ts';
import type { RuleGround } from './rule-ground.ts';
import { plainLine, type RuleWay } from './rule-way.ts';
import { given, joined, line, numbers, stretchOf, yesOrNo } from './stretch.ts';

const withLine =
  (number: RuleWay): RuleWay =>
  (of, rule) => {
    const found = number(of, rule);
    return found === null ? null : joined(found, plainLine(of, rule));
  };

const words = ({ id }: ClassRule): string => CLASS_RULE_LESSONS[id].number;

/** An answer as it is. */
const answer = withLine((of, rule) => {
  const value = rule.number(of)?.value;
  return value === undefined ? null : numbers(given('N', rule.unit, words(rule), value));
});

/** Must-have parts that a level axis does not reach, counted. */
const mustTilt = withLine((of, rule) => {
  const parts = rule.number(of)?.parts ?? [];
  const { families } = of;
  return {
    given: families.flatMap(({ name, must }, index) => [
      yesOrNo(`m${index + 1}`, `${name} must be held`, must, `parts[${name}].must`),
      yesOrNo(
        `k${index + 1}`,
        `all sides of ${name} lie around one level axis`,
        isAroundOf(of, name, parts),
        `parts[${name}].around`,
      ),
    ]),
    steps: [step('N', '', words(rule), families.map((_, at) => `m${at + 1}*(1 - k${at + 1})`).join(' + '))],
  };
});

const isAroundOf = ({ families }: RuleGround, name: string, tilted: readonly string[]): boolean =>
  !tilted.includes(name) &&
  families
    .filter((each) => each.name === name)
    .every(({ cases }) =>
      cases.every(({ approaches }) => approaches.every(({ kind }) => kind === 'around' || kind === 'sides')),
    );

/** Vises on the arrangement that passes with most of them. */
const vises = withLine(({ judged, decision }) => {
  const stations = ({ measures }: Judged): number => measures.viseStations?.low ?? -1;
  const [best] = judged
    .filter(({ passes }) => passes === 'yes')
    .toSorted((a, b) => stations(b) - stations(a));
  const arrangement = decision.arrangements.find(({ id }) => id === best?.id);
  const found = arrangement === undefined ? null : visesFormula(arrangement, decision, 'N');
  return found === null ? null : { given: found.symbols, steps: found.steps };
});

/** The rotary that is lifted most easily, and what the check of the lift says that the shop lifts. */
const lifting: RuleWay = (of, rule) => {
  const mass = lightestLift(of)?.mass;
  const table = of.tables.find((each) => each.mass.path === mass?.path);
  const outcome = of.judged
    .find(({ setUp }) => setUp.candidate.rotary === table)
    ?.own.find(({ check }) => check.id === 'lift');
  const worked = outcome === undefined ? null : workedOutcome(outcome, null);
  if (mass === undefined || worked === null) return null;
  return joined(
    numbers(given('N', 'kg', words(rule), mass)),
    stretchOf(worked),
    line('L', 'kg', CLASS_RULE_LESSONS[rule.id].limit, worked.formula.have),
  );
};

/** Swaps a year, were it one that comes off. */
const swaps = withLine(({ shop: { switchesPerWeek, assume } }, rule) => ({
  given: [
    given(
      'n_w',
      '',
      'switches a week between three-axis and five-axis work',
      switchesPerWeek,
      'work.switchesPerWeek',
    ),
    given('y_w', '', 'weeks that are worked in a year', known(assume.weeks, 'assume.weeks')),
  ],
  steps: [step('N', '', words(rule), 'n_w*y_w')],
}));

/** All that has to be bought for the cheapest. */
const leastPrice = withLine(({ judged }) => {
  const [cheapest] = judged.toSorted((a, b) => a.priced.total.low - b.priced.total.low);
  const found = cheapest === undefined ? null : priceLines({ prices: shownItems(cheapest.priced) }, 'N');
  return found === null ? null : { given: found.symbols, steps: found.steps };
});

/** Counted one by one. */
const passing = withLine(({ judged }, rule) =>
  judged.length === 0
    ? null
    : {
        given: judged.map(({ id, passes }, index) =>
          given(
            `p${index + 1}`,
            '',
            `${id} passes: one for yes, nothing for no`,
            known(passes === 'yes' ? 1 : passes === 'no' ? 0 : Number.NaN, `passes.${id}`),
          ),
        ),
        steps: [step('N', '', words(rule), judged.map((_, index) => `p${index + 1}`).join(' + '))],
      },
);

/** The rules about the shop, the table and the catalog. */
export const SHOP_WAYS = {
  'sides-must-tilt': mustTilt,
  'three-axis-often-light': answer,
  'three-axis-often-heavy': answer,
  'three-axis-seldom': answer,
  'vises-fit': vises,
  'vises-missing': vises,
  'lifts-off': lifting,
  'stays-on': lifting,
  'never-lifted': swaps,
  'price-over': leastPrice,
  'catalog-none': answer,
  'none-passes': passing,
  'some-pass': passing,
} as const;
