import type { Part } from '../../questions/answers.ts';
import { type WorkedCheck, workedOutcome } from '../examples/worked-check.ts';
import { givenNumbers } from '../formula/work-out.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import type { Exercise } from './exercise.ts';
import type { FoundCase } from './find-case.ts';
import type { CheckProbe } from './probe-check.ts';

/** How an exercise is told. */
interface Told {
  readonly about: string;
  readonly title: string;
  /** what is to be found out, behind the sentence on the shop */
  readonly task: string;
  readonly steps: readonly LessonStep[];
}

/** An exercise on a case in which a check decides; null: the check cannot be worked out by its printed formula. */
export function exerciseOf(
  { answers, catalog, moved, on, probe }: FoundCase<CheckProbe>,
  { seed, level }: Pick<Exercise, 'seed' | 'level'>,
  tell: (part: Part, worked: WorkedCheck) => Told,
): Exercise | null {
  const [part] = answers.parts;
  const worked = part === undefined ? null : workedOutcome(probe.outcome, part);
  if (part === undefined || worked === null) return null;
  const { about, title, task, steps } = tell(part, worked);
  const [machine] = catalog.machines;
  const [rotary] = catalog.rotaries;
  const table =
    rotary === undefined ? 'with the table that is built into it' : `with the rotary ${rotary.name}`;
  return {
    about,
    seed,
    level,
    check: probe.outcome.check.id,
    side: probe.side,
    share: probe.share,
    moved,
    lesson: {
      title: `${title} (exercise ${seed}, level ${level})`,
      about: `An invented shop wants to make the part ${part.name} on the machine ${machine?.name} ${table}. ${task}`,
      answers,
      machines: catalog.machines.map(({ id }) => id),
      rotaries: catalog.rotaries.map(({ id }) => id),
      on,
      steps,
    },
    catalog,
    given: givenNumbers(worked.formula, worked.values),
  };
}
