import type { Decision } from '../../rules/decision.ts';
import { type Inline, say, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { type ArrangementAt, type CheckAt, checksAt } from '../checks-at.ts';
import { machineName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { bayPanel } from './bay-panel.ts';
import { doorwayPanel } from './doorway-panel.ts';
import { drawnText, type Figure } from './figure.ts';
import { rowsOf } from './known-stack.ts';

/**
 * The bay with the machine in it, and the doorway that it has to come through. Null where the machine stands there already,
 * or where no size is known well enough to draw.
 */
export function bayPlan(decision: Decision, at: ArrangementAt): Figure | null {
  const rows = rowsOf(decision, at.arrangement);
  const found = (check: 'bay' | 'doorway'): CheckAt | undefined =>
    checksAt(at).find(({ result }) => result.check === check);
  const [bay, doorway] = [found('bay'), found('doorway')];
  if (rows === null) return null;
  const inBay = bay === undefined ? null : bayPanel(decision, rows.machine, bay);
  const through = doorway === undefined ? null : doorwayPanel(decision, rows.machine, doorway);
  const panels = [inBay, through].filter((each) => each !== null);
  if (panels.length === 0) return null;
  const told = [bay, doorway].flatMap((each, index) =>
    each === undefined || (index === 0 ? inBay : through) === null ? [] : [sentenceOf(each)],
  );
  const name = machineName(decision, at.arrangement.machine, [...at.path, 'machine']);
  const said = say`${name} in the building, to scale. ${told.flatMap((each, index) => (index === 0 ? each : [words('; '), ...each]))}.`;
  return {
    words: said,
    scene: {
      name: 'bay-and-doorway',
      title: drawnText(say`The bay and the doorway`, decision),
      description: drawnText(said, decision),
      panels,
      toScale: true,
      notDrawn: [
        ...(inBay === null ? [] : ['Where in the bay it stands is not known: it is drawn in a corner.']),
        ...(inBay === null || through === null
          ? [`Not drawn, because it is not known: ${inBay === null ? 'the bay' : 'the doorway'}.`]
          : []),
      ],
    },
  };
}

function sentenceOf(check: CheckAt): readonly Inline[] {
  const { need, have, margin } = checkNumbers(check);
  const name = words(CHECK_WORDS[check.result.check].name);
  return say`${name}: ${need} needed, ${have} there, margin ${margin} (${verdictSign(check.result.verdict)})`;
}
