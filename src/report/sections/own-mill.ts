import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, list, paragraph } from '../blocks/block.ts';
import { type Inline, number, say } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { machineAt, rowNumber } from '../catalog-row.ts';
import { arrangementAt } from '../checks-at.ts';
import { arrangementName, machineName } from '../names.ts';
import { failures } from './misses.ts';

type Line = readonly Inline[];

/** Reasons of a near miss that are read. */
const MOST_REASONS = 2;

/** What the mill that is owned takes, what came near on it, its limits, and what the next purchase would add. */
export function ownMill(decision: Decision): readonly Block[] {
  const { ownMill: own } = decision.route;
  if (own === null) return [];
  const path: Path = ['route', 'ownMill'];
  const takes = own.takes.map((each, index): Line => {
    const at: Path = [...path, 'takes', index];
    return say`${arrangementName(decision, each.id, [...at, 'id'])}: ${number([...at, 'coverage'], 'share')} of the hours, ${number([...at, 'price'], 'money')}`;
  });
  const near = nearOn(decision, own.machine);
  return [
    heading(2, say`What the mill that is owned takes`),
    ...(takes.length === 0
      ? [paragraph(say`It takes no rotary of this catalog that passes.`)]
      : [paragraph(say`Best first, each in its best mounting:`), list(takes)]),
    ...limits(decision, own.machine, [...path, 'machine']),
    ...(near.length === 0 ? [] : [paragraph(say`What came near on it, and what stopped it:`), list(near)]),
    paragraph(nextPurchase(decision)),
  ];
}

/** What any rotary on it has to live with, from its catalog row. */
function limits(decision: Decision, id: string, idPath: Path): readonly Block[] {
  const machine = machineAt(decision, id);
  if (machine === null || machine.row.table === null) return [];
  const of = (unit: string, ...keys: Path): Inline => rowNumber(machine, unit, ...keys);
  return [
    paragraph(
      say`What any rotary on ${machineName(decision, id, idPath)} has to live with: a table of ${of('mm', 'table', 'size', 0)}
        by ${of('mm', 'table', 'size', 1)} that carries ${of('kg', 'table', 'load')}, rotary, fixture and part together; X
        travel ${of('mm', 'travel', 0)}, Y travel ${of('mm', 'travel', 1)}; a spindle nose that rises to
        ${of('mm', 'noseToTable', 1)} over the table, less the center height of the rotary.`,
    ),
  ];
}

const nearOn = (decision: Decision, machine: string): readonly Line[] =>
  decision.nearestMisses.flatMap((id, index): readonly Line[] => {
    const at = arrangementAt(decision, id);
    if (at?.arrangement.machine !== machine) return [];
    const name = arrangementName(decision, id, ['nearestMisses', index]);
    return [say`${name}: ${failures(decision, at, MOST_REASONS)}`];
  });

function nextPurchase(decision: Decision): Line {
  const next = decision.route.ownMill?.next ?? null;
  if (next === null)
    return say`The next purchase: nothing in this catalog would surely hold more of the work than the first of these.`;
  const at = (key: string): Path => ['route', 'ownMill', 'next', key];
  return say`The next purchase: ${arrangementName(decision, next.id, at('id'))} is the cheapest that would hold more. It
    adds ${number(at('addsHours'), 'h')} a year, at ${number(at('addsPrice'), 'money', { ifNull: 'a price that is not known' })} more.`;
}
