import type { Part } from '../../questions/answers.ts';
import { CLASS_WORDS } from '../../report/wording/arrangement.ts';
import { CHECK_WORDS } from '../../report/wording/checks.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import { workedOutcome } from '../examples/worked-check.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import { type Drawn, foundCheck } from './check-exercise.ts';
import { numberSteps, type Subject, verdictStep } from './check-steps.ts';
import { type MadeExercise, noneFound } from './exercise.ts';
import { exerciseOf } from './exercise-of.ts';
import type { CheckProbe } from './probe-check.ts';
import { sidesDrawn } from './recipe.ts';
import { seededBy } from './seeded.ts';
import { TOLERANCE } from './way-step.ts';

export const WHOLE_CASE = 'whole-case';

/** One of these decides about the part, and with it about all. */
const DECIDING = ['swing', 'payload', 'tilt-swing', 'reach-high', 'spindle-speed', 'index-accuracy'] as const;
/** On the way their numbers are asked for, as far as they are about the arrangement. */
const ON_THE_WAY: readonly CheckId[] = ['swing', 'payload', 'reach-high', 'tilt-moment'];

/**
 * A whole case through the tree: the kind, the size, the weight, the height, the moment, the table, and whether the part can
 * be made. One check alone decides it; which one is not said.
 */
export function wholeCaseExercise({ seed, level, catalog }: Drawn): MadeExercise {
  const draw = seededBy(seed, WHOLE_CASE, `level ${level}`);
  const [side] = sidesDrawn(draw);
  for (const check of draw.shuffled(DECIDING)) {
    const found = foundCheck(check, { side, level, catalog, draw });
    if (found === null) continue;
    const exercise = exerciseOf(found, { seed, level }, (part) => ({
      about: WHOLE_CASE,
      title: 'A whole case',
      task: 'Go through the tree: the sides, the size, the weight, the height, the table. At most one check fails.',
      steps: wholeCaseSteps(check, found.probe, part),
    }));
    if (exercise !== null) return { ok: true, exercise };
  }
  return noneFound('for a whole case', level);
}

function wholeCaseSteps(
  check: CheckId,
  { outcome: { of }, outcomes }: CheckProbe,
  part: Part,
): readonly LessonStep[] {
  const subjectOf = (id: CheckId): readonly Subject[] => {
    const outcome = outcomes.find((each) => each.check.id === id);
    if (outcome === undefined || outcome.comparison === null) return [];
    const ofPart = outcome.check.about === 'part';
    return [{ check: id, part: ofPart ? part.name : null, worked: workedOutcome(outcome, part) }];
  };
  return [
    ...subjectOf('tilt-range').map(verdictStep),
    ...ON_THE_WAY.flatMap(subjectOf).flatMap((subject) => numberSteps(subject).slice(0, 1)),
    ...subjectOf('table-footprint').map(verdictStep),
    ...subjectOf(check).map(verdictStep),
    coverageStep(check),
    classStep(of.rotary.class, of.rotary.row?.name ?? null),
  ];
}

const coverageStep = (check: CheckId): LessonStep => ({
  ask: 'Which share of the five-axis hours does this arrangement hold? The part is all of them: 1 where it can be made, 0 where it cannot.',
  asked: { kind: 'measure', measure: 'coverage' },
  on: null,
  tolerance: TOLERANCE,
  hints: ['A part is held where every check of it holds, with a measure or without.'],
  why: `Everything hangs on one check here: ${CHECK_WORDS[check].title}. One that fails is enough to lose the part.`,
});

const classStep = (
  ofClass: Extract<LessonStep['asked'], { kind: 'class' }>['class'],
  name: string | null,
): LessonStep => ({
  ask: `Of this kind (${CLASS_WORDS[ofClass].title}) the catalog has ${name === null ? 'the table of this machine' : `the ${name}`} alone. What is found of the kind for this work?`,
  asked: { kind: 'class', class: ofClass },
  on: null,
  tolerance: TOLERANCE,
  hints: [
    'A kind is ruled out where its sides, its tilt, its size, its payload or its price can never do. It suits where an arrangement of it passes and nothing weighty speaks against it; else it is possible.',
  ],
  why: 'The kind is judged on all that the catalog has of it; what speaks against it weighs, and what speaks for it does not make up for that.',
});
