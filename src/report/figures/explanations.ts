import type { Panel } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { say, words } from '../blocks/inline.ts';
import { type Path, placeText } from '../blocks/path.ts';
import { type ArrangementAt, arrangementAt, type CheckAt } from '../checks-at.ts';
import { checkTold } from './check-told.ts';
import { EXPLAINED_BY, FIGURE_KINDS, type FigureKind } from './explained-by.ts';
import type { Figure } from './figure.ts';
import { figureRows } from './figure-rows.ts';

/** A figure with the check that it stands beside. */
export interface Explanation {
  readonly kind: FigureKind;
  readonly check: CheckAt;
  /** whether the numbers of the check are measured in it: a range is not */
  readonly isMeasured: boolean;
  readonly figure: Figure;
}

/**
 * The figures that explain checks, each once: with the first of the checks whose numbers are measured in it, or where there
 * are only ranges with the first that it could explain. Checks that come the worst first have it beside the one that gives
 * way first.
 */
export function explained(
  decision: Decision,
  at: ArrangementAt,
  checks: readonly CheckAt[],
  kinds: readonly FigureKind[] = Object.keys(FIGURE_KINDS) as FigureKind[],
): readonly Explanation[] {
  return kinds.flatMap((kind): readonly Explanation[] => {
    const own = checks.filter(({ result }) => EXPLAINED_BY[result.check] === kind);
    const figure = own.length === 0 ? null : FIGURE_KINDS[kind](decision, at);
    if (figure === null) return [];
    const measured = own.find(({ path }) => panelOf(figure, path) !== undefined);
    const check = measured ?? own[0];
    return check === undefined ? [] : [{ kind, check, isMeasured: measured !== undefined, figure }];
  });
}

/** The one panel in which a check is measured, in words one sentence; null where no picture measures it. */
export function explanationOf(decision: Decision, at: ArrangementAt, check: CheckAt): Figure | null {
  const { result, path } = check;
  const kind = EXPLAINED_BY[result.check];
  const figure = kind === undefined ? null : FIGURE_KINDS[kind](decision, at);
  const panel = figure === null ? undefined : panelOf(figure, path);
  if (figure === null || panel === undefined) return null;
  const said = say`${words(figure.scene.title)}, to scale: ${checkTold(check)}.`;
  return { ...alone(figure, panel), words: said };
}

/** The panel in which a number of the check is measured. */
function panelOf({ scene }: Figure, check: Path): Panel | undefined {
  const place = `${placeText(check)}.`;
  return scene.panels.find(({ dimensions }) =>
    dimensions.some(({ path }) => placeText(path).startsWith(place)),
  );
}

const alone = (figure: Figure, panel: Panel): Figure => ({
  ...figure,
  scene: { ...figure.scene, panels: [panel] },
});

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
  const figures = new Map<FigureKind, Figure | null>();
  const figureOf = (kind: FigureKind): Figure | null => {
    const made = figures.get(kind);
    if (made !== undefined) return made;
    const figure = FIGURE_KINDS[kind](decision, at);
    figures.set(kind, figure);
    return figure;
  };
  const given = new Set<Panel>();
  return (path) => {
    const check = at.arrangement.checks[Number(path.at(-1))]?.check;
    const kind = check === undefined ? undefined : EXPLAINED_BY[check];
    const figure = kind === undefined ? null : figureOf(kind);
    const panel = figure === null ? undefined : panelOf(figure, path);
    if (figure === null || panel === undefined || given.has(panel)) return [];
    given.add(panel);
    return figureRows(alone(figure, panel), decision, look);
  };
}
