import type { ClassRule } from '../../rules/classes/rule.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import type { RuleGround } from './rule-ground.ts';
import { given, numbers, type Stretch } from './stretch.ts';

/** How a rule comes to its number N and its line L; null: there is no way on paper. */
export type RuleWay = (of: RuleGround, rule: ClassRule) => Stretch | null;

/** The line as the rule has it: an assumption, an answer, or a count. */
export const plainLine = (of: RuleGround, rule: ClassRule): Stretch =>
  numbers(given('L', rule.unit, CLASS_RULE_LESSONS[rule.id].limit, rule.limit(of)));
