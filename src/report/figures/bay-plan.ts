import type { Decision } from '../../rules/decision.ts';
import { joined, say } from '../blocks/inline.ts';
import { type ArrangementAt, type CheckAt, checksAt } from '../checks-at.ts';
import { machineName } from '../names.ts';
import { bayPanel } from './bay-panel.ts';
import { checkTold } from './check-told.ts';
import { doorwayPanel } from './doorway-panel.ts';
import { drawnText, type Figure, notKnown } from './figure.ts';
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
  const inBay = bay === undefined ? null : bayPanel(decision, rows, bay);
  const through = doorway === undefined ? null : doorwayPanel(decision, rows, doorway);
  const panels = [inBay, through].filter((each) => each !== null);
  if (panels.length === 0) return null;
  const drawn = [inBay === null ? undefined : bay, through === null ? undefined : doorway];
  const told = drawn.filter((each) => each !== undefined).map(checkTold);
  const name = machineName(decision, at.arrangement.machine, [...at.path, 'machine']);
  const said = say`${name} in the building, to scale. ${joined(told)}.`;
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
        ...notKnown([...(inBay === null ? ['the bay'] : []), ...(through === null ? ['the doorway'] : [])]),
      ],
    },
  };
}
