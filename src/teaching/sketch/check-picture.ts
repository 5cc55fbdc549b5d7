import { placeText } from '../../report/blocks/path.ts';
import { arrangementAt, checksAt } from '../../report/checks-at.ts';
import { bayPlan } from '../../report/figures/bay-plan.ts';
import { elevation } from '../../report/figures/elevation.ts';
import { faceplatePlan } from '../../report/figures/faceplate-plan.ts';
import type { Figure } from '../../report/figures/figure.ts';
import { tablePlan } from '../../report/figures/table-plan.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';

/** In the order in which they are looked through. */
const PICTURES = [elevation, faceplatePlan, bayPlan, tablePlan] as const;

interface Wanted {
  readonly check: CheckId;
  readonly need: number;
  readonly have: number;
}

/**
 * The panel of a picture of the report in which a check is measured, from the decision of its example. Null where the
 * decision sets the example up in another way, so that the picture would show other numbers.
 */
export function checkPicture(decision: Decision, { check, need, have }: Wanted): Figure | null {
  for (const { id } of decision.arrangements) {
    const arrangement = arrangementAt(decision, id);
    if (arrangement === undefined) continue;
    const found = checksAt(arrangement).find(
      ({ result }) => result.check === check && same(result.need, need) && same(result.have, have),
    );
    if (found === undefined) continue;
    const place = `${placeText(found.path)}.`;
    for (const draw of PICTURES) {
      const figure = draw(decision, arrangement);
      const panel = figure?.scene.panels.find(({ dimensions }) =>
        dimensions.some(({ path }) => placeText(path).startsWith(place)),
      );
      if (figure == null || panel === undefined) continue;
      return { ...figure, scene: { ...figure.scene, name: `explain-${check}`, panels: [panel] } };
    }
  }
  return null;
}

const same = (shown: unknown, wanted: number): boolean =>
  typeof shown === 'number' && Math.abs(shown - wanted) <= 1e-6 * Math.max(1, Math.abs(wanted));
