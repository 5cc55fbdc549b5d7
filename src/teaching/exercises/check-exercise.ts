import type { Catalog } from '../../catalog/catalog.ts';
import { CHECK_WORDS } from '../../report/wording/checks.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import { judgedAlone } from '../../rules/standing.ts';
import { workedOutcome } from '../examples/worked-check.ts';
import type { Lesson } from '../lessons/lesson.ts';
import { checkSteps } from './check-steps.ts';
import { type Exercise, givenOf, type MadeExercise } from './exercise.ts';
import { type FoundCase, findCase } from './find-case.ts';
import { type CheckProbe, probedCheck } from './probe-check.ts';
import type { Level, Side } from './recipe.ts';
import { RECIPES } from './recipes.ts';
import { type Seeded, seededBy } from './seeded.ts';

/** What is drawn: for the same seed the same. */
export interface Drawn {
  readonly seed: number;
  readonly level: Level;
  readonly catalog: Catalog;
}

/** So often another arrangement is drawn where a check cannot be worked out by its printed formula. */
const DRAWS = 3;

/** An exercise in which a check decides whether an arrangement passes. */
export function checkExercise(check: CheckId, { seed, level, catalog }: Drawn): MadeExercise {
  const draw = seededBy(seed, check, `level ${level}`);
  // half of all seeds hold, and half fail
  const first: Side = draw.whole(0, 1) === 0 ? 'yes' : 'no';
  const sides: readonly Side[] =
    RECIPES[check].neverNo === true ? ['yes'] : [first, first === 'yes' ? 'no' : 'yes'];
  for (const side of sides) {
    for (let turn = 0; turn < DRAWS; turn += 1) {
      const found = foundCheck(check, { side, level, catalog, draw });
      if (found === null) break;
      const made = exerciseOf(check, found, { seed, level, side });
      if (made !== null) return { ok: true, exercise: made };
    }
  }
  const { title } = CHECK_WORDS[check];
  return {
    ok: false,
    why: `no machine and rotary of the catalog was found with which the check ${check} (${title}) alone decides at level ${level}: another seed or level may find one, and a catalog with more rows does`,
  };
}

/** A case in which a check alone decides; null: none was found. */
export const foundCheck = (
  check: CheckId,
  { side, level, catalog, draw }: { side: Side; level: Level; catalog: Catalog; draw: Seeded },
): FoundCase<CheckProbe> | null =>
  findCase(
    catalog,
    {
      recipe: RECIPES[check],
      side,
      level,
      probe: (answers, rows, on) => {
        const judged = judgedAlone(answers, rows, on);
        return judged === null ? null : probedCheck(judged, check);
      },
    },
    draw,
  );

function exerciseOf(
  check: CheckId,
  { answers, catalog, moved, on, probe }: FoundCase<CheckProbe>,
  { seed, level, side }: { seed: number; level: Level; side: Side },
): Exercise | null {
  const [part] = answers.parts;
  if (part === undefined) return null;
  const worked = workedOutcome(probe.outcome, part);
  if (worked === null) return null;
  const [machine] = catalog.machines;
  const [rotary] = catalog.rotaries;
  const { name, title, sentence } = CHECK_WORDS[check];
  const isOfPart = probe.outcome.check.about === 'part';
  const lesson: Lesson = {
    title: `${title} (exercise ${seed}, level ${level})`,
    about: `An invented shop wants to make the part ${part.name} on the machine ${machine?.name}${rotary === undefined ? ' with the table that is built into it' : ` with the rotary ${rotary.name}`}. Everything else holds: whether it can be bought hangs on one check, ${name}. ${sentence}`,
    answers,
    machines: catalog.machines.map(({ id }) => id),
    rotaries: catalog.rotaries.map(({ id }) => id),
    on,
    steps: checkSteps({ check, part: isOfPart ? part.name : null, worked }),
  };
  return {
    about: check,
    seed,
    level,
    check,
    side,
    share: probe.share,
    moved,
    lesson,
    catalog,
    given: givenOf(worked),
  };
}
