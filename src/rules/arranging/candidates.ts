import { type Catalog, MOUNTINGS, type Mounting, type Rotary } from '../../catalog/catalog.ts';
import { machineCase } from '../facts/machine-facts.ts';
import { builtInCase, onItsBack, rotaryCase } from '../facts/rotary-facts.ts';
import type { MachineCase, RotaryCase } from '../judging/case.ts';
import { canBeHeld } from '../sides/hold.ts';

/** One machine with one rotary, mounted one way; place, additions and plates are chosen for it later. */
export interface Candidate {
  readonly id: string;
  readonly machine: MachineCase;
  readonly rotary: RotaryCase;
  readonly mounting: Mounting | 'built-in';
}

/**
 * Every arrangement that the catalog allows, in its order: machine × rotary × mounting, and each built-in
 * table. On a horizontal mill rotaries of one axis, standing upright; a tilting rotary on one is not enumerated (and
 * the report says so). A spindle that is not stated is judged as vertical, and a bare mill is no arrangement.
 */
export function candidatesOf(catalog: Catalog): readonly Candidate[] {
  const rotaries = catalog.rotaries.map(rotaryCase);
  return catalog.machines.flatMap((row): readonly Candidate[] => {
    const machine = machineCase(row);
    if (row.builtIn !== null) {
      const rotary = builtInCase(row, row.builtIn);
      return [{ id: `${row.id}/built-in`, machine, rotary, mounting: 'built-in' }];
    }
    if (row.kind === 'five-axis') return [];
    const mounted = row.spindle === 'horizontal' ? upright : asItStands;
    return rotaries.flatMap((rotary) => mounted(machine, rotary));
  });
}

/** The ways in which the base can be held; both where the catalog says nothing. */
function asItStands(machine: MachineCase, rotary: RotaryCase): readonly Candidate[] {
  return MOUNTINGS.filter((mounting) => mounting.startsWith(rotary.axes === 2 ? 'tilt' : 'axis'))
    .filter((mounting) => canBeHeld(machine, holdsOf(rotary), mounting))
    .map((mounting) => candidate(machine, rotary, mounting));
}

/** On its back: Y of a horizontal mill is upright, so the axis lies along Y. */
function upright(machine: MachineCase, rotary: RotaryCase): readonly Candidate[] {
  if (rotary.axes === 2 || !canBeHeld(machine, holdsOf(rotary), UPRIGHT)) return [];
  return [candidate(machine, onItsBack(rotary), UPRIGHT)];
}

const UPRIGHT = 'axis-along-y';
const holdsOf = ({ row }: RotaryCase): Rotary['hold'] => row?.hold ?? {};
const candidate = (machine: MachineCase, rotary: RotaryCase, mounting: Mounting): Candidate => ({
  id: `${machine.key}+${rotary.key}/${mounting}`,
  machine,
  rotary,
  mounting,
});
