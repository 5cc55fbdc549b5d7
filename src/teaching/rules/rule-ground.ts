import type { Class } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { type ClassGround, groundFor } from '../../rules/classes/ground.ts';
import type { Decision } from '../../rules/decision.ts';
import type { Standing } from '../../rules/standing.ts';

/** What the way of a rule is read from: the ground of the rule, and the decision with the arrangements that it lists. */
export interface RuleGround extends ClassGround {
  readonly decision: Decision;
}

/** The ground of the rules about one class. */
export const classGround = (
  ofClass: Class,
  answers: Answers,
  { shop, fiveAxis, judged, tables }: Standing,
): ClassGround => groundFor(ofClass, answers, shop, fiveAxis, { judged, tables });

/** The same, with the decision on the same answers. */
export const ruleGround = (
  ofClass: Class,
  answers: Answers,
  standing: Standing,
  decision: Decision,
): RuleGround => ({ ...classGround(ofClass, answers, standing), decision });
