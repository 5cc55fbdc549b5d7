import { classRule } from '../../rules/classes/index.ts';
import type { Speaks } from '../../rules/classes/rule.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { Need } from '../../rules/decision.ts';
import { TOUGH } from '../../rules/features/chips.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import type { FeatureGround } from '../../rules/features/rule.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { FEATURE_LESSONS } from '../words/features.ts';

/** What an answer is where a comparison of a way is so. Example: N > L → 'required' */
export interface ChoiceCase {
  readonly rule: string;
  readonly words: string;
  readonly comesTo: string;
}

/** Which word is the answer, of the first that is so; else the last. */
export interface Choices {
  readonly cases: readonly ChoiceCase[];
  readonly otherwise: string;
}

/** How a number is held against its line, as it is worked out. */
export const SPEAKS_IN_FORMULAS: Readonly<Record<Speaks, string>> = {
  below: '<',
  'at least': '>=',
  above: '>',
  'at most': '<=',
};

/** What a rule says. */
export function ruleChoices(id: ClassRuleId): Choices {
  const { when, side } = classRule(id);
  const words = CLASS_RULE_LESSONS[id].title;
  return { cases: [{ rule: `N ${SPEAKS_IN_FORMULAS[when]} L`, words, comesTo: side }], otherwise: 'nothing' };
}

/** How much a feature is needed where its number lies on the near side of its line. */
function under(id: FeatureId, { rotary, covered, partOf }: FeatureGround): Need {
  switch (id) {
    case 'rotatingWorkOffset':
    case 'spindleProbe':
    case 'toolSetter':
    case 'camPost':
      return 'worth having';
    case 'tiltedWorkPlane':
      return rotary.axes === 1 ? 'not needed' : 'worth having';
    case 'throughSpindleCoolant':
      return covered.some(({ family }) => TOUGH.has(partOf(family.name).material))
        ? 'worth having'
        : 'not needed';
    default:
      return 'not needed';
  }
}

/** How much a feature is needed; `names`: what its way gives. */
export function featureChoices(id: FeatureId, of: FeatureGround, names: ReadonlySet<string>): Choices {
  const { number, rule } = FEATURE_LESSONS[id];
  const over: Need = rule === 'worth having above' ? 'worth having' : 'required';
  const line = names.has('N') && names.has('L') ? [{ rule: 'N > L', words: number, comesTo: over }] : [];
  const pays =
    names.has('P') && names.has('W')
      ? [{ rule: 'W >= P', words: 'what it saves is worth its price', comesTo: 'pays for itself' }]
      : [];
  return { cases: [...line, ...pays], otherwise: under(id, of) };
}
