import type { MachineCase } from '../judging/case.ts';
import { canBeHeld } from '../sides/hold.ts';
import type { Stand } from './open-ground.ts';

/**
 * Can this rotary, mounted like this, stand on this machine? On its back on a horizontal mill and on its base on the others,
 * and held to the slots as far as one knows: what `candidatesOf` allows, pair by pair.
 */
export function standsOn({ rotary, mounting }: Stand, machine: MachineCase): boolean {
  const horizontal = machine.row.spindle === 'horizontal';
  if (horizontal !== (rotary.gravity !== 'tool')) return false;
  return canBeHeld(machine, rotary.row?.hold ?? {}, mounting);
}
