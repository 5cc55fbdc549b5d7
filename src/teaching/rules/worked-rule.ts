import type { ClassRule } from '../../rules/classes/rule.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import { ruleChoices } from './choices.ts';
import { CLASS_RULE_WAYS } from './class-ways.ts';
import type { RuleGround } from './rule-ground.ts';
import { workedStretch } from './stretch.ts';

/** The number and the line of a rule, worked out on one ground. Null: it has nothing to say there, or a number is not known. */
export function workedRule(rule: ClassRule, of: RuleGround): WorkedWay | null {
  if (rule.number(of) === null) return null;
  const stretch = CLASS_RULE_WAYS[rule.id](of, rule);
  if (stretch === null) return null;
  const sense = rule.when === 'at least' || rule.when === 'above' ? 'at-least' : 'at-most';
  const worked = workedStretch(stretch, { need: 'N', have: 'L', sense, unit: rule.unit });
  return worked === null ? null : { ...worked, choices: ruleChoices(rule.id) };
}
