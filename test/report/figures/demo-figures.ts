import { type Bounds, boundsOf } from '../../../src/drawing/outline.ts';
import type { Panel, Scene } from '../../../src/drawing/scene.ts';
import type { ArrangementAt } from '../../../src/report/checks-at.ts';
import type { Figure } from '../../../src/report/figures/figure.ts';
import type { Arrangement, Decision } from '../../../src/rules/decision.ts';

export interface Drawn {
  /** Example: 'alder+bittern/tilt-along-x of shop' */
  readonly what: string;
  readonly shop: string;
  readonly decision: Decision;
  readonly arrangement: Arrangement;
  readonly scene: Scene;
}

/** A figure of every arrangement of which there is one. */
export const drawnOf = (
  decisions: readonly (readonly [shop: string, decision: Decision])[],
  figureOf: (decision: Decision, at: ArrangementAt) => Figure | null,
): readonly Drawn[] =>
  decisions.flatMap(([shop, decision]) =>
    decision.arrangements.flatMap((arrangement, index) => {
      const figure = figureOf(decision, { arrangement, path: ['arrangements', index] });
      const what = `${arrangement.id} of ${shop}`;
      return figure === null ? [] : [{ what, shop, decision, arrangement, scene: figure.scene }];
    }),
  );

/** The rectangle that holds all things of a kind. */
export const spanOf = (panel: Panel, thing: string): Bounds =>
  boundsOf({
    ...panel,
    shapes: panel.shapes.filter((each) => each.thing === thing),
    marks: [],
    dimensions: [],
    labels: [],
  });
