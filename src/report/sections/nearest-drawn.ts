import type { Decision } from '../../rules/decision.ts';
import { type Block, figureBlock, heading, paragraph } from '../blocks/block.ts';
import { say } from '../blocks/inline.ts';
import { type ArrangementAt, checksAt, worstFirst } from '../checks-at.ts';
import { explained } from '../figures/explanations.ts';
import { marginsChart } from '../figures/margins-chart.ts';
import { picturedArrangement } from '../figures/pictured.ts';
import { drawnBeside } from './drawn-beside.ts';

/** Where nothing is recommended: the first that may still win, or what came nearest, beside the checks that stand worst. */
export function nearestDrawn(decision: Decision): readonly Block[] {
  const at = decision.recommended === null ? picturedArrangement(decision) : undefined;
  if (at === undefined) return [];
  const blocks = [...figureBlock(marginsChart(decision, at)), ...worstDrawn(decision, at)];
  if (blocks.length === 0) return [];
  const what =
    decision.outcome === 'open'
      ? say`The first of those that may still win, at the parts where it is tightest.`
      : say`What came nearest, at the parts where it stands worst.`;
  return [heading(2, say`How it stands, drawn`), paragraph(what), ...blocks];
}

/** Each figure of an arrangement beside the check that stands worst of those that it shows. */
function worstDrawn(decision: Decision, at: ArrangementAt): readonly Block[] {
  const checks = worstFirst(checksAt(at));
  return explained(decision, at, checks)
    .toSorted((a, b) => checks.indexOf(a.check) - checks.indexOf(b.check))
    .flatMap((each) => drawnBeside(decision, each));
}
