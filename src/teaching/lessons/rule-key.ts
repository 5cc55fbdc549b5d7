import { CLASS_RULES, classRule } from '../../rules/classes/index.ts';
import { argumentsOf } from '../../rules/classes/speak.ts';
import type { ArgumentSide } from '../../rules/decision.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import { featureGround, featuresOf } from '../../rules/weighing/features.ts';
import type { Judged } from '../../rules/weighing/judged.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import { ruleGround } from '../rules/rule-ground.ts';
import { wayTo } from '../rules/stretch.ts';
import { workedFeature } from '../rules/worked-feature.ts';
import { workedRule } from '../rules/worked-rule.ts';
import type { Asked } from './lesson.ts';
import type { DecidedLesson, StepKey } from './step-key.ts';

/** What a rule may say of a kind of rotary. */
const RULE_SAYS = ['for', 'against', 'rules out', 'nothing'] as const satisfies readonly (
  | ArgumentSide
  | 'nothing'
)[];

type RuleAsked = Extract<Asked, { rule: unknown }>;

/** What a rule says of a kind, or a number on its way; or why that cannot be worked out. */
export function ruleKey(asked: RuleAsked, { lesson, standing, decision }: DecidedLesson): StepKey | string {
  const rule = classRule(asked.rule);
  if (!rule.about.includes(asked.class)) return `the rule ${asked.rule} is not about ${asked.class}`;
  const ground = ruleGround(asked.class, lesson.answers, standing, decision);
  const worked = workedRule(rule, ground);
  if (asked.kind === 'rule number')
    return worked === null ? `the numbers of ${asked.rule} are not known` : numberKey(worked, asked.gives);
  const said = argumentsOf(CLASS_RULES, asked.class, ground).find((each) => each.rule === asked.rule);
  if (said?.sure === false) return `it is not known whether ${asked.rule} speaks`;
  return { kind: 'choice', value: said?.side ?? 'nothing', options: RULE_SAYS, worked };
}

/** A number on the way to how much a feature is needed; or why it cannot be worked out. */
export function featureKey(
  { feature, gives }: Extract<Asked, { kind: 'feature number' }>,
  decided: DecidedLesson,
  arrangement: Judged,
): StepKey | string {
  const way = featureWay(feature, decided, arrangement);
  return way === null ? `the numbers of ${feature} are not known` : numberKey(way, gives);
}

/** How much a feature is needed there, worked out; null: there is no way on paper. */
export function featureWay(
  feature: FeatureId,
  { lesson: { answers }, standing: { shop } }: DecidedLesson,
  arrangement: Judged,
): WorkedWay | null {
  const need = featuresOf(arrangement, answers, shop).find((each) => each.feature === feature);
  return need === undefined ? null : workedFeature(featureGround(arrangement, answers, shop), need);
}

/** A number on a way, with what leads to it. */
function numberKey(way: WorkedWay, gives: string): StepKey | string {
  const worked = wayTo(way, gives);
  return worked === null
    ? `nothing on the way is called ${gives}`
    : { kind: 'number', value: worked.worked.need, unit: worked.formula.unit, worked };
}
