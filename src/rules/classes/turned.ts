import type { Argument, Finding } from '../decision-classes.ts';
import type { ClassGround } from './ground.ts';
import { CLASS_RULES } from './index.ts';
import type { Speaks } from './rule.ts';
import type { ClassRuleId } from './rule-ids.ts';
import { argumentsOf, findingOf } from './speak.ts';

/** What the rules say of a class, and what is found of it. */
export interface Spoken {
  readonly said: readonly Argument[];
  readonly finding: Finding;
}

const OPPOSITE: Readonly<Record<Speaks, Speaks>> = {
  below: 'at least',
  'at least': 'below',
  above: 'at most',
  'at most': 'above',
};

/** What is said and found of a class; with a rule `turned` that one speaks where it was silent, and is silent where it spoke. */
export function spokenOf(ground: ClassGround, turned: ClassRuleId | null = null): Spoken {
  const rules = CLASS_RULES.map((rule) =>
    rule.id === turned ? { ...rule, when: OPPOSITE[rule.when] } : rule,
  );
  const said = argumentsOf(rules, ground.class, ground);
  const passes = ground.judged.some((judged) => judged.passes === 'yes');
  return { said, finding: findingOf(rules, said, passes) };
}
