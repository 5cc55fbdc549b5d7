import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { FEATURE_WORDS } from '../../report/wording/features.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import { FEATURE_LESSONS } from '../words/features.ts';
import type { Drawn } from './check-exercise.ts';
import type { MadeExercise } from './exercise.ts';
import { exerciseOn } from './exercise-of.ts';
import { FEATURE_RECIPES } from './feature-recipes.ts';
import { findCase } from './find-case.ts';
import { probedFeature } from './probe-feature.ts';
import type { Side } from './recipe.ts';
import { seededBy } from './seeded.ts';
import { acrossFrom } from './walk.ts';
import { wayHints } from './way-hints.ts';

const TOLERANCE = 1;
/** So often another arrangement is drawn where no number moves the rule over its line. */
const DRAWS = 3;

/** An exercise in which the rule of a feature decides how much it is needed. */
export function featureExercise(id: FeatureId, { seed, level, catalog }: Drawn): MadeExercise {
  const draw = seededBy(seed, id, `level ${level}`);
  const first: Side = draw.whole(0, 1) === 0 ? 'yes' : 'no';
  const recipe = FEATURE_RECIPES[id];
  const name = FEATURE_WORDS[id];
  for (const side of [first, first === 'yes' ? 'no' : 'yes'] as const)
    for (let turn = 0; turn < DRAWS; turn += 1) {
      const probe = (answers: Answers, rows: Catalog, on: string) =>
        probedFeature(id, { answers, rows }, on, recipe);
      const found = findCase(catalog, { recipe, side, level, probe }, draw);
      if (found === null || found.probe.way === null) break;
      const { catalog: rows, on } = found;
      const across = acrossFrom(recipe.moves, found, rows, (answers) => probe(answers, rows, on));
      if (across === null && recipe.moves.length > 0) continue;
      const { way } = found.probe;
      const exercise = exerciseOn(found, {
        seed,
        level,
        about: id,
        title: `${sentenceCase(name)}: needed, or worth its price?`,
        task: `Everything else holds. Is this needed with it, does it pay, or can it be left out: ${name}? ${FEATURE_LESSONS[id].plain}`,
        steps: [...numberSteps(id, way), needStep(id)],
        decides: { rule: 'feature', id },
        way,
        across,
      });
      return { ok: true, exercise };
    }
  return {
    ok: false,
    why: `no machine and rotary of the catalog was found with which the rule of the feature ${id} decides at level ${level}: another seed or level may find one, and a catalog with more rows does`,
  };
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
    const unit = line.unit === '' || line.unit === 'money' ? '' : `, in ${line.unit}`;
    return [
      {
        ask: `${ask(feature)}: how much is that${unit}?`,
        asked: { kind: 'feature number', feature, gives },
        on: null,
        tolerance: TOLERANCE,
        hints: wayHints(formula, gives),
        why: FEATURE_LESSONS[feature].plain,
      },
    ];
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
