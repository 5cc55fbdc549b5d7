import { type BuiltIn, type Catalog, type Machine, MOUNTINGS, type Mounting } from '../../catalog/catalog.ts';
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

/** A rotary as it is mounted, with no machine under it yet. */
export interface Stand {
  readonly rotary: RotaryCase;
  readonly mounting: Mounting;
}

/**
 * Every arrangement that the catalog allows, in its order: machine × rotary × mounting, and each built-in
 * table. On a horizontal mill rotaries of one axis, standing upright; a tilting rotary on one is not enumerated (and
 * the report says so). A spindle that is not stated is judged as vertical, and a bare mill is no arrangement.
 */
export function candidatesOf(catalog: Catalog): readonly Candidate[] {
  const stands = standsIn(catalog);
  return catalog.machines.flatMap((row): readonly Candidate[] => {
    if (row.builtIn !== null) return [onBuiltIn(row, row.builtIn)];
    if (row.kind === 'five-axis') return [];
    const machine = machineCase(row);
    return stands.filter((stand) => standsOn(stand, machine)).map((stand) => candidateOn(machine, stand));
  });
}

/** Every rotary in each of its mountings; one axis also on its back: Y of a horizontal mill is upright, so it lies along Y. */
export const standsIn = ({ rotaries }: Pick<Catalog, 'rotaries'>): readonly Stand[] =>
  rotaries.map(rotaryCase).flatMap((rotary): readonly Stand[] => {
    const asItStands = MOUNTINGS.filter((each) => each.startsWith(rotary.axes === 2 ? 'tilt' : 'axis'));
    return [
      ...asItStands.map((mounting) => ({ rotary, mounting })),
      ...(rotary.axes === 1 ? [{ rotary: onItsBack(rotary), mounting: UPRIGHT }] : []),
    ];
  });

const UPRIGHT: Mounting = 'axis-along-y';

/** Is a rotary that lies so of use under this spindle? On its back under a level one, on its base under the others. */
export const isUnder = ({ gravity }: Pick<RotaryCase, 'gravity'>, { row }: MachineCase): boolean =>
  (row.spindle === 'horizontal') === (gravity !== 'tool');

/** Does it stand on this machine: on its back on a horizontal mill, else on its base, and can it be held there? */
export const standsOn = ({ rotary, mounting }: Stand, machine: MachineCase): boolean =>
  isUnder(rotary, machine) && canBeHeld(machine, rotary.row?.hold ?? {}, mounting);

/** The arrangement of a machine with a stand on it. */
export const candidateOn = (machine: MachineCase, { rotary, mounting }: Stand): Candidate => ({
  id: `${machine.key}+${rotary.key}/${mounting}`,
  machine,
  rotary,
  mounting,
});

/** The arrangement of a machine with the table that is built into it. */
export const onBuiltIn = (row: Machine, builtIn: BuiltIn): Candidate => ({
  id: `${row.id}/built-in`,
  machine: machineCase(row),
  rotary: builtInCase(row, builtIn),
  mounting: 'built-in',
});
