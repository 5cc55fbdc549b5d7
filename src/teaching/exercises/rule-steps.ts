import type { Class } from '../../catalog/catalog.ts';
import { CLASS_WORDS } from '../../report/wording/arrangement.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import { classRule } from '../../rules/classes/index.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { Spoken } from '../../rules/classes/turned.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import type { Asked, LessonStep } from '../lessons/lesson.ts';
import { SIDE_WORDS, SPEAKS_SIGNS } from '../topics/rule-topic.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { TOLERANCE, wayStep } from './way-step.ts';

/** A rule about a kind, as it stands in a case. */
export interface RuleSubject {
  readonly rule: ClassRuleId;
  readonly class: Class;
  readonly way: WorkedWay | null;
  readonly spoken: Spoken;
  readonly passes: boolean;
}

/** The numbers that have to be worked out, what the rule says, and what is found of the kind. */
export const ruleSteps = (subject: RuleSubject): readonly LessonStep[] => [
  ...numberSteps(subject),
  saysStep(subject),
  findingStep(subject),
];

/** Number and line, as far as they are not given. */
function numberSteps({ rule, class: ofClass, way }: RuleSubject): readonly LessonStep[] {
  if (way === null) return [];
  const { formula } = way;
  const lesson = CLASS_RULE_LESSONS[rule];
  return (['N', 'L'] as const).flatMap((gives): readonly LessonStep[] => {
    if (!formula.steps.some((each) => each.gives === gives)) return [];
    const words = sentenceCase(gives === 'N' ? lesson.number : lesson.limit);
    const asked = { kind: 'rule number', rule, class: ofClass, gives } as const;
    return [wayStep({ words, unit: formula.unit, asked, formula, gives, why: lesson.plain })];
  });
}

function saysStep({ rule: id, class: ofClass }: RuleSubject): LessonStep {
  const rule = classRule(id);
  const { number, limit, mistake } = CLASS_RULE_LESSONS[id];
  return {
    ask: `Held against its line, what does this rule say of this kind (${CLASS_WORDS[ofClass].title})? Nothing that is said more plainly by another rule keeps it silent here.`,
    asked: { kind: 'rule', rule: id, class: ofClass },
    on: null,
    tolerance: TOLERANCE,
    hints: [
      `N: ${number}. L: ${limit}.`,
      `Where N ${SPEAKS_SIGNS[rule.when]} L, ${SIDE_WORDS[rule.side]}; else the rule says nothing.`,
    ],
    why: `The usual mistake: ${mistake}`,
  };
}

/** The rest of what is said, so that the finding can be come to. */
function findingStep({ rule, class: ofClass, spoken: { said }, passes }: RuleSubject): LessonStep {
  const others = said.filter((each) => each.rule !== rule);
  const out = others.some(({ side }) => side === 'rules out');
  const weighs = others.some((each) => classRule(each.rule).weighty === true);
  const asked: Asked = { kind: 'class', class: ofClass };
  return {
    ask: `${out ? 'Another rule rules this kind out' : 'No other rule rules this kind out'}, ${
      weighs ? 'another speaks against it so that it weighs' : 'no other that weighs speaks against it'
    }, and ${passes ? 'an arrangement of it passes' : 'no arrangement of it passes'}. This rule ${weightOf(rule)}. What is found of the kind?`,
    asked,
    on: null,
    tolerance: TOLERANCE,
    hints: [
      'A kind is ruled out where one rule rules it out. It suits where an arrangement of it passes and nothing that weighs speaks against it; else it is possible.',
    ],
    why:
      classRule(rule).side === 'rules out' || classRule(rule).weighty === true
        ? 'Here the finding hangs on this one rule.'
        : 'A rule like this is heard when kinds are held against each other; it changes no finding by itself.',
  };
}

const weightOf = (id: ClassRuleId): string => {
  const { side, weighty } = classRule(id);
  if (side === 'rules out') return 'rules a kind out where it speaks';
  if (weighty === true) return 'weighs where it speaks';
  return 'does not weigh, whatever it says';
};
