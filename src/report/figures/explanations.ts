import type { Panel } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Path, placeText } from '../blocks/path.ts';
import { arrangementAt } from '../checks-at.ts';
import { bayPlan } from './bay-plan.ts';
import { elevation } from './elevation.ts';
import { faceplatePlan } from './faceplate-plan.ts';
import type { Figure } from './figure.ts';
import { figureRows } from './figure-rows.ts';
import { tablePlan } from './table-plan.ts';

/**
 * What draws the checks of an arrangement, as rows of a screen by the path of a check: the panel in which its numbers are
 * measured. Each panel is given once, to the check that asks for it first; nothing where there is none.
 */
export function explanations(
  decision: Decision,
  id: string,
  look: { readonly width: number; readonly ascii: boolean },
): (check: Path) => readonly string[] {
  const at = arrangementAt(decision, id);
  if (at === undefined) return () => [];
  const figures = [
    elevation(decision, at),
    faceplatePlan(decision, at),
    bayPlan(decision, at),
    tablePlan(decision, at),
  ].filter((each) => each !== null);
  const given = new Set<Panel>();
  return (check) => {
    const place = `${placeText(check)}.`;
    for (const figure of figures) {
      const panel = figure.scene.panels.find(({ dimensions }) =>
        dimensions.some(({ path }) => placeText(path).startsWith(place)),
      );
      if (panel === undefined || given.has(panel)) continue;
      given.add(panel);
      return figureRows(alone(figure, panel), decision, look);
    }
    return [];
  };
}

const alone = (figure: Figure, panel: Panel): Figure => ({
  ...figure,
  scene: { ...figure.scene, panels: [panel] },
});
