import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { FEATURE_WORDS } from '../../report/wording/features.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import { FEATURE_LESSONS } from '../words/features.ts';
import type { Drawn } from './check-exercise.ts';
import { type MadeExercise, noneFound } from './exercise.ts';
import { exerciseOn } from './exercise-of.ts';
import { FEATURE_RECIPES } from './feature-recipes.ts';
import { findAcross } from './find-across.ts';
import { probedFeature } from './probe-feature.ts';
import { sidesDrawn } from './recipe.ts';
import { seededBy } from './seeded.ts';
import { TOLERANCE, wayStep } from './way-step.ts';

/** An exercise in which the rule of a feature decides how much it is needed. */
export function featureExercise(id: FeatureId, { seed, level, catalog }: Drawn): MadeExercise {
  const draw = seededBy(seed, id, `level ${level}`);
  const recipe = FEATURE_RECIPES[id];
  const name = FEATURE_WORDS[id];
  const probe = (answers: Answers, rows: Catalog, on: string) =>
    probedFeature(id, { answers, rows }, on, recipe);
  for (const side of sidesDrawn(draw)) {
    const found = findAcross(catalog, { recipe, side, level, probe }, draw);
    const way = found?.probe.way ?? null;
    if (found === null || way === null) continue;
    const exercise = exerciseOn(found, {
      seed,
      level,
      about: id,
      title: `${sentenceCase(name)}: needed, or worth its price?`,
      task: `Everything else holds. Is this needed with it, does it pay, or can it be left out: ${name}? ${FEATURE_LESSONS[id].plain}`,
      steps: [...numberSteps(id, way), needStep(id)],
      decides: { rule: 'feature', id },
      way,
      across: found.across,
    });
    return { ok: true, exercise };
  }
  return noneFound(`with which the rule of the feature ${id} decides`, level);
}

/** What of the way is asked for one after the other. */
const ASKED: readonly (readonly [gives: string, ask: (id: FeatureId) => string])[] = [
  ['N', (id) => sentenceCase(FEATURE_LESSONS[id].number.replace(/ \(.*\)$/, ''))],
  ['U', () => 'Setups a year'],
  ['h', () => 'Hours that it saves a year'],
  ['W', () => 'What these hours are worth over the years'],
];

function numberSteps(feature: FeatureId, { formula }: WorkedWay): readonly LessonStep[] {
  return ASKED.flatMap(([gives, ask]): readonly LessonStep[] => {
    const line = formula.steps.find((each) => each.gives === gives);
    // nothing at all is no number to work out
    if (line === undefined || line.formula === '0') return [];
    const asked = { kind: 'feature number', feature, gives } as const;
    const why = FEATURE_LESSONS[feature].plain;
    return [wayStep({ words: ask(feature), unit: line.unit, asked, formula, gives, why })];
  });
}

function needStep(feature: FeatureId): LessonStep {
  const { number, limit, mistake } = FEATURE_LESSONS[feature];
  return {
    ask: `How much is it needed: ${FEATURE_WORDS[feature]}?`,
    asked: { kind: 'feature', feature },
    on: null,
    tolerance: TOLERANCE,
    hints: [
      `N: ${number}. L: ${limit}.`,
      'What the work requires is required, whatever it costs. Else it pays for itself where the hours that it saves are worth its price.',
    ],
    why: `The usual mistake: ${mistake}`,
  };
}
