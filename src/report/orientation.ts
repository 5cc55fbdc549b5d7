import type { Mounting } from '../catalog/catalog.ts';
import type { Arrangement, Decision } from '../rules/decision.ts';
import { facedSide, housingSides, type MachineSide } from '../rules/sides/housing.ts';

const STANDS: Readonly<Record<MachineSide, string>> = {
  left: 'on the left',
  right: 'on the right',
  door: 'toward the operator’s door',
  column: 'toward the column',
};

const LOOKS: Readonly<Record<MachineSide, string>> = {
  ...STANDS,
  left: 'to the left',
  right: 'to the right',
};

/**
 * Which way round the rotary stands, as somebody sees it from the door; null where it is built in.
 * Example: 'The rotary is turned end for end: its housing stands toward the column.'
 */
export function orientation(
  { machine, rotary, mounting, turned }: Arrangement,
  { inputs }: Decision,
): string | null {
  const row = inputs.catalog.rotaries.find(({ id }) => id === rotary);
  if (row === undefined || mounting === 'built-in') return null;
  const machineRow = inputs.catalog.machines.find(({ id }) => id === machine);
  if (machineRow?.spindle === 'horizontal')
    return 'The rotary lies on its back, its faceplate up and its axis upright, over the middle of the table’s depth.';
  const lying: { readonly mounting: Mounting; readonly turned: boolean } = { mounting, turned };
  const how = turned
    ? 'The rotary is turned end for end against its catalog row'
    : 'The rotary stands the way round that its catalog row draws it';
  const sides = housingSides(row.housing ?? [], lying).map((side) => STANDS[side]);
  const clauses = [
    ...(row.tilt === null ? [`its faceplate looks ${LOOKS[facedSide(lying)]}`] : []),
    ...(sides.length === 0 ? [] : [`its housing stands ${sides.join(' and ')}`]),
  ];
  const from = clauses.some((clause) => /left|right/.test(clause)) ? ' (seen from the door)' : '';
  const seen = clauses.length === 0 ? `${how}.` : `${how}: ${clauses.join(', and ')}${from}.`;
  return row.housing === null
    ? `${seen} No outline of its housing is published, so ask the seller which end has it.`
    : seen;
}
