import type { Hold, Mounting, Rotary } from '../../catalog/catalog.ts';
import type { Case, MachineCase } from '../judging/case.ts';

const ACROSS: Readonly<Record<Mounting, Mounting>> = {
  'tilt-along-x': 'tilt-along-y',
  'tilt-along-y': 'tilt-along-x',
  'axis-along-x': 'axis-along-y',
  'axis-along-y': 'axis-along-x',
};

/** A catalog states how a base is held for slots along X; where they run along Y it is held the other way round. */
const mountingToSlots = ({ slotsAlong }: Pick<MachineCase, 'slotsAlong'>, mounting: Mounting): Mounting =>
  slotsAlong === 'y' ? ACROSS[mounting] : mounting;

/** Can the base be held in this mounting on this table? It can, as far as one knows, where nothing is said. */
export const canBeHeld = (machine: MachineCase, hold: Rotary['hold'], mounting: Mounting): boolean =>
  hold === 'unknown' || hold[mountingToSlots(machine, mounting)] !== undefined;

/**
 * How the base is held to the slots of this table, and under which name the catalog states it. Unknown where the
 * catalog says nothing of it, or not which way the slots run.
 */
export function holdOf(of: Case): { readonly mounting: Mounting; readonly hold: Hold | 'unknown' } | null {
  const { row } = of.rotary;
  if (row === null || of.mounting === 'built-in') return null;
  const mounting = mountingToSlots(of.machine, of.mounting);
  if (row.hold === 'unknown' || of.machine.slotsAlong === 'unknown') return { mounting, hold: 'unknown' };
  const hold = row.hold[mounting];
  return hold === undefined ? null : { mounting, hold };
}

/** Where what is missing about it would stand. */
export function holdPath(of: Case, name: string): string {
  if (of.machine.slotsAlong === 'unknown') return `machines[${of.machine.key}].table.slots.along`;
  return `rotaries[${of.rotary.key}].hold.${holdOf(of)?.mounting ?? of.mounting}.${name}`;
}
