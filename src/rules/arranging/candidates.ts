import { type Catalog, MOUNTINGS, type Mounting, type Rotary } from '../../catalog/catalog.ts';
import { machineCase } from '../facts/machine-facts.ts';
import { builtInCase, rotaryCase } from '../facts/rotary-facts.ts';
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
 * table. Horizontal spindles are not enumerated yet, one that is not stated is judged as vertical (and the
 * report says so), and a bare mill is no arrangement.
 */
export function candidatesOf(catalog: Catalog): readonly Candidate[] {
  const rotaries = catalog.rotaries.map(rotaryCase);
  return catalog.machines
    .filter((row) => row.spindle !== 'horizontal')
    .flatMap((row): readonly Candidate[] => {
      const machine = machineCase(row);
      if (row.builtIn !== null)
        return [
          {
            id: `${row.id}/built-in`,
            machine,
            rotary: builtInCase(row.id, row.builtIn),
            mounting: 'built-in' as const,
          },
        ];
      if (row.kind === 'five-axis') return [];
      return rotaries.flatMap((rotary) =>
        mountingsOf(machine, rotary).map((mounting) => ({
          id: `${row.id}+${rotary.key}/${mounting}`,
          machine,
          rotary,
          mounting,
        })),
      );
    });
}

/** The ways in which the base can be held; both where the catalog says nothing. */
function mountingsOf(machine: MachineCase, { row, axes }: RotaryCase): readonly Mounting[] {
  const hold: Rotary['hold'] = row?.hold ?? {};
  return MOUNTINGS.filter((mounting) => mounting.startsWith(axes === 2 ? 'tilt' : 'axis')).filter(
    (mounting) => canBeHeld(machine, hold, mounting),
  );
}
