import type { Decision } from '../../rules/decision.ts';
import { type Block, figureBlock, heading, paragraph } from '../blocks/block.ts';
import { say } from '../blocks/inline.ts';
import { elevation } from '../figures/elevation.ts';
import { faceplatePlan } from '../figures/faceplate-plan.ts';
import { marginsChart } from '../figures/margins-chart.ts';
import { picturedArrangement } from '../figures/pictured.ts';
import { tablePlan } from '../figures/table-plan.ts';

/** Where nothing is recommended: the first that may still win, or what came nearest, to scale. */
export function nearestDrawn(decision: Decision): readonly Block[] {
  const at = decision.recommended === null ? picturedArrangement(decision) : undefined;
  if (at === undefined) return [];
  const figures = [
    marginsChart(decision, at),
    faceplatePlan(decision, at),
    elevation(decision, at),
    tablePlan(decision, at),
  ];
  const blocks = figures.flatMap(figureBlock);
  if (blocks.length === 0) return [];
  const what =
    decision.outcome === 'open'
      ? say`The first of those that may still win, at the parts where it is tightest.`
      : say`What came nearest, at the parts where it stands worst.`;
  return [heading(2, say`Drawn to scale`), paragraph(what), ...blocks];
}
