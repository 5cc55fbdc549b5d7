import type { Answers, Part } from '../../questions/answers.ts';
import { type WorkedCheck, type WorkedWay, workedOutcome } from '../examples/worked-check.ts';
import { givenNumbers } from '../formula/work-out.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import type { Exercise } from './exercise.ts';
import type { FoundCase } from './find-case.ts';
import type { CheckProbe } from './probe-check.ts';
import type { Probe } from './walk.ts';

/** How an exercise is told. */
interface Told {
  readonly about: string;
  readonly title: string;
  /** what is to be found out, behind the sentence on the shop */
  readonly task: string;
  readonly steps: readonly LessonStep[];
}

/** What decides it, how it is told, and how that is worked out; null: there is nothing to be worked out. */
interface Of extends Told, Pick<Exercise, 'seed' | 'level' | 'decides'> {
  readonly way: WorkedWay | null;
  readonly across?: Answers | null;
}

/** An exercise on a case in which a check decides; null: the check cannot be worked out by its printed formula. */
export function exerciseOf(
  found: FoundCase<CheckProbe>,
  drawn: Pick<Exercise, 'seed' | 'level'>,
  tell: (part: Part, worked: WorkedCheck) => Told,
): Exercise | null {
  const [part] = found.answers.parts;
  const { outcome } = found.probe;
  const worked = part === undefined ? null : workedOutcome(outcome, part);
  if (part === undefined || worked === null) return null;
  const decides = { rule: 'check', id: outcome.check.id } as const;
  return exerciseOn(found, { ...drawn, ...tell(part, worked), decides, way: worked });
}

/** An exercise on a case in which one rule decides. */
export function exerciseOn(
  { answers, catalog, moved, on, probe }: FoundCase<Probe>,
  { about, title, task, steps, decides, way, across = null, seed, level }: Of,
): Exercise {
  const parts = answers.parts.map(({ name }) => name);
  const make = parts.length === 1 ? `the part ${parts[0]}` : `the parts ${parts.join(' and ')}`;
  const [machine] = catalog.machines;
  const [rotary] = catalog.rotaries;
  const table =
    rotary === undefined ? 'with the table that is built into it' : `with the rotary ${rotary.name}`;
  return {
    about,
    seed,
    level,
    decides,
    side: probe.side,
    share: probe.share,
    moved,
    across,
    lesson: {
      title: `${title} (exercise ${seed}, level ${level})`,
      about: `An invented shop wants to make ${make} on the machine ${machine?.name} ${table}. ${task}`,
      answers,
      machines: catalog.machines.map(({ id }) => id),
      rotaries: catalog.rotaries.map(({ id }) => id),
      on,
      steps,
    },
    catalog,
    given: way === null ? [] : givenNumbers(way.formula, way.values),
  };
}
