import { nearest } from '../../documents/nearest.ts';
import { CHECK_IDS, type CheckId } from '../../rules/checks/ids.ts';
import { CHECKS } from '../../rules/checks/index.ts';
import { CLASS_RULE_IDS, type ClassRuleId } from '../../rules/classes/rule-ids.ts';
import { FEATURE_IDS, type FeatureId } from '../../rules/features/ids.ts';
import { STAGES, type StageId } from '../../rules/stages/index.ts';
import { checkExercise, type Drawn } from './check-exercise.ts';
import { classExercise } from './class-exercise.ts';
import type { MadeExercise } from './exercise.ts';
import { featureExercise } from './feature-exercise.ts';
import { seededBy } from './seeded.ts';
import { WHOLE_CASE, wholeCaseExercise } from './whole-case.ts';

/** Everything that an exercise can be about: a whole case, stages, of which a check is drawn, checks, rules of the class, and features. */
export const EXERCISE_SUBJECTS: readonly string[] = [
  WHOLE_CASE,
  ...STAGES,
  ...CHECK_IDS,
  ...CLASS_RULE_IDS,
  ...FEATURE_IDS,
];

const isCheck = (about: string): about is CheckId => CHECK_IDS.some((id) => id === about);
const isClassRule = (about: string): about is ClassRuleId => CLASS_RULE_IDS.some((id) => id === about);
const isFeature = (about: string): about is FeatureId => FEATURE_IDS.some((id) => id === about);
const isStage = (about: string): about is StageId => STAGES.some((id) => id === about);

/**
 * Draws an exercise in which one rule decides, for a seed (a whole number), a level (1: far from the line, 3: near it) and a
 * catalog. The same of these gives the same exercise on every computer. Where there is none: why, in words.
 * Example: makeExercise('swing', { seed: 17, level: 2, catalog })
 */
export function makeExercise(about: string, drawn: Drawn): MadeExercise {
  if (about === WHOLE_CASE) return wholeCaseExercise(drawn);
  if (isCheck(about)) return checkExercise(about, drawn);
  if (isStage(about)) return stageExercise(about, drawn);
  if (isClassRule(about)) return classExercise(about, drawn);
  if (isFeature(about)) return featureExercise(about, drawn);
  const meant = nearest(about, EXERCISE_SUBJECTS);
  const hint = meant === undefined ? '' : ` (did you mean ${meant}?)`;
  return {
    ok: false,
    why: `there is no exercise about "${about}"${hint}. There are: ${EXERCISE_SUBJECTS.join(', ')}`,
  };
}

/** Of the checks of a stage one is drawn; where the catalog has nothing for it, the next. */
function stageExercise(stage: StageId, drawn: Drawn): MadeExercise {
  const checks = CHECKS.filter((check) => check.stage === stage).map(({ id }) => id);
  let made: MadeExercise = { ok: false, why: `the stage ${stage} has no check` };
  for (const check of seededBy(drawn.seed, stage).shuffled(checks)) {
    made = checkExercise(check, drawn);
    if (made.ok) return made;
  }
  return made;
}
