import { CHECK_WORDS } from '../../report/wording/checks.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { judgedAlone } from '../../rules/standing.ts';
import { workedOutcome } from '../examples/worked-check.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import { type Drawn, foundCheck } from './check-exercise.ts';
import { numberSteps, verdictStep } from './check-steps.ts';
import { givenOf, type MadeExercise } from './exercise.ts';
import type { Side } from './recipe.ts';
import { seededBy } from './seeded.ts';

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
  const side: Side = draw.whole(0, 1) === 0 ? 'yes' : 'no';
  for (const check of draw.shuffled(DECIDING)) {
    const found = foundCheck(check, { side, level, catalog, draw });
    if (found === null) continue;
    const { answers, catalog: rows, moved, on, probe } = found;
    const judged = judgedAlone(answers, rows, on);
    const [part] = answers.parts;
    if (judged === null || part === undefined) continue;
    const outcomes = [...judged.own, ...judged.families.flatMap((each) => each.outcomes)];
    const subjectOf = (id: CheckId) => {
      const outcome = outcomes.find((each: Outcome) => each.check.id === id);
      if (outcome === undefined || outcome.comparison === null) return null;
      const ofPart = outcome.check.about === 'part';
      return { check: id, part: ofPart ? part.name : null, worked: workedOutcome(outcome, part) };
    };
    const verdictOf = (id: CheckId): readonly LessonStep[] => {
      const subject = subjectOf(id);
      return subject === null ? [] : [verdictStep(subject)];
    };
    const [machine] = rows.machines;
    const [rotary] = rows.rotaries;
    const worked = workedOutcome(probe.outcome, part);
    if (worked === null) continue;
    return {
      ok: true,
      exercise: {
        about: WHOLE_CASE,
        seed,
        level,
        check,
        side,
        share: probe.share,
        moved,
        catalog: rows,
        given: givenOf(worked),
        lesson: {
          title: `A whole case (exercise ${seed}, level ${level})`,
          about: `An invented shop wants to make the part ${part.name} on the machine ${machine?.name}${rotary === undefined ? ' with the table that is built into it' : ` with the rotary ${rotary.name}`}. Go through the tree: the sides, the size, the weight, the height, the table. At most one check fails.`,
          answers,
          machines: rows.machines.map(({ id }) => id),
          rotaries: rows.rotaries.map(({ id }) => id),
          on,
          steps: [
            ...verdictOf('tilt-range'),
            ...ON_THE_WAY.flatMap((id) => {
              const subject = subjectOf(id);
              return subject === null ? [] : numberSteps(subject).slice(0, 1);
            }),
            ...verdictOf('table-footprint'),
            ...verdictOf(check),
            coverageStep(check),
            classStep(judged.setUp.candidate.rotary.class),
          ],
        },
      },
    };
  }
  return {
    ok: false,
    why: `no machine and rotary of the catalog was found for a whole case at level ${level}: another seed or level may find one, and a catalog with more rows does`,
  };
}

const coverageStep = (check: CheckId): LessonStep => ({
  ask: 'Which share of the five-axis hours does this arrangement hold? The part is all of them: 1 where it can be made, 0 where it cannot.',
  asked: { kind: 'measure', measure: 'coverage' },
  on: null,
  tolerance: 1,
  hints: ['A part is held where every check of it holds, with a measure or without.'],
  why: `Everything hangs on one check here: ${CHECK_WORDS[check].title}. One that fails is enough to lose the part.`,
});

const classStep = (ofClass: Extract<LessonStep['asked'], { kind: 'class' }>['class']): LessonStep => ({
  ask: `What is found of this kind of rotary (${ofClass}) for this work?`,
  asked: { kind: 'class', class: ofClass },
  on: null,
  tolerance: 1,
  hints: [
    'A kind is ruled out where its sides, its tilt, its size, its payload or its price can never do. It suits where an arrangement of it passes and nothing weighty speaks against it; else it is possible.',
  ],
  why: 'The kind is judged on all that the catalog has of it, and on every reason that speaks for it or against it.',
});
