import type { Catalog } from '../../catalog/catalog.ts';
import { CHECK_WORDS } from '../../report/wording/checks.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import { judgedAlone } from '../../rules/standing.ts';
import { checkSteps } from './check-steps.ts';
import { type MadeExercise, noneFound } from './exercise.ts';
import { exerciseOf } from './exercise-of.ts';
import { type FoundCase, findCase } from './find-case.ts';
import { type CheckProbe, probedCheck } from './probe-check.ts';
import { type Level, type Side, sidesDrawn } from './recipe.ts';
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
  const drawn = sidesDrawn(draw);
  const sides: readonly Side[] = RECIPES[check].neverNo === true ? ['yes'] : drawn;
  const { name, title, sentence } = CHECK_WORDS[check];
  for (const side of sides) {
    for (let turn = 0; turn < DRAWS; turn += 1) {
      const found = foundCheck(check, { side, level, catalog, draw });
      if (found === null) break;
      const isOfPart = found.probe.outcome.check.about === 'part';
      const exercise = exerciseOf(found, { seed, level }, (part, worked) => ({
        about: check,
        title,
        task: `Everything else holds: whether it can be bought hangs on one check, ${name}. ${sentence}`,
        steps: checkSteps({ check, part: isOfPart ? part.name : null, worked }),
      }));
      if (exercise !== null) return { ok: true, exercise };
    }
  }
  return noneFound(`with which the check ${check} (${title}) alone decides`, level);
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
