import { ASSUMPTIONS } from '../../questions/assumptions.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import type { FeatureNeed } from '../../rules/decision.ts';
import { yearlyFacts } from '../../rules/facts/hours.ts';
import type { FeatureGround } from '../../rules/features/rule.ts';
import { answered, known } from '../../rules/judging/value.ts';
import { setupsOnRotary } from '../../rules/money/setups-on-rotary.ts';
import { step } from '../formula/formula-source.ts';
import type { GivenNumber } from '../formula/printed-formula.ts';
import { given, joined, type Stretch } from './stretch.ts';

/** Minutes that are saved at each setup: one number, or for each of so many tools. */
export type Minutes = readonly ('probeMinutes' | 'offsetMinutes' | 'setterMinutes' | 'toolsPerSetup')[];

/** Setups a year as U, hours that are saved as h, what they are worth as W, and the price as P. */
export function savingWay(of: FeatureGround, need: FeatureNeed, minutes: Minutes): Stretch {
  const { answers, shop, machine, rotary, covered, partOf } = of;
  const parts = covered.map(({ family }) => partOf(family.name));
  const assumed = minutes.map(
    (name): GivenNumber =>
      given(
        name === 'toolsPerSetup' ? 'n_t' : 't_s',
        name === 'toolsPerSetup' ? '' : 'min',
        ASSUMPTIONS[name].means,
        known(shop.assume[name], `assume.${name}`),
      ),
  );
  const at = parts.map((_, index) => `l${index + 1}*s${index + 1}`);
  const { price } = need;
  return joined({
    given: [
      ...parts.flatMap((part, index) => [
        given(`l${index + 1}`, '', `lots a year: ${part.name}`, yearlyFacts(part).lots),
        given(
          `s${index + 1}`,
          '',
          `setups of each lot on this rotary: ${part.name}`,
          setupsOnRotary(part, rotary.axes),
          `parts[${part.name}].setupsThen`,
        ),
      ]),
      ...assumed,
      given(
        'r',
        'money',
        'rate of the shop, an hour',
        answered(answers.money.shopRate, 'money.shopRate', NOT_SURE['money.shopRate']),
      ),
      given(
        'y',
        'years',
        'years that are looked at',
        answered(answers.money.years, 'money.years', NOT_SURE['money.years']),
      ),
      given(
        'P',
        'money',
        'its price',
        known(
          typeof price === 'number' ? price : Number.NaN,
          `machines[${machine.key}].features.${need.feature}`,
        ),
      ),
    ],
    steps: [
      step('U', '', 'setups a year', at.length === 0 ? '0' : at.join(' + ')),
      step('h', 'h', 'hours saved a year', `U*${assumed.map(({ symbol }) => symbol).join('*')}/60`),
      step('W', 'money', 'what they are worth over the years', 'h*r*y'),
    ],
  });
}
