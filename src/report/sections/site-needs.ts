import type { Machine, Rotary } from '../../catalog/catalog.ts';
import type { Decision } from '../../rules/decision.ts';
import { enumerate, type Inline, number, say } from '../blocks/inline.ts';
import { machineAt, rowNumber as of, type RowAt, rotaryAt } from '../catalog-row.ts';
import type { ArrangementAt } from '../checks-at.ts';
import type { SiteRow } from '../wording/site.ts';

type Said = readonly Inline[];

/** What the arrangement asks of the building, from the catalog, row by row. */
export function siteNeeds(decision: Decision, at: ArrangementAt): Readonly<Record<SiteRow, Said>> | null {
  const machine = machineAt(decision, at.arrangement.machine);
  const rotary = rotaryAt(decision, at.arrangement.rotary);
  if (machine === null) return null;
  const owned = decision.inputs.answers.shop.machine === machine.row.id;
  const there = say`the mill stands there already`;
  const higher = spacer(machine, at);
  const assumed = (key: string): Inline => number(['inputs', 'assume', key], 'mm');
  return {
    bay: owned ? there : say`${standing(machine)}; ${room(machine)}`,
    ceiling:
      owned && higher.length === 0
        ? there
        : say`height ${of(machine, 'mm', 'footprint', 2)}${higher}, and ${assumed('ceilingRoom')} above it (assumed)`,
    doorway: owned
      ? there
      : say`${shipped(machine)} as shipped, never laid down; ${assumed('doorSide')} more in width, ${assumed('doorSkates')}
          more in height for skates (assumed)`,
    'door-sill':
      rotary === null
        ? say`nothing is lifted over it`
        : say`its height is in no catalog: ask for the drawing`,
    floor: say`machine ${of(machine, 'kg', 'mass')}${rotary === null ? [] : say`, rotary ${of(rotary, 'kg', 'mass')}`}; the
      heaviest fixture and part come on top`,
    power: owned ? say`as now, and what the drives of the rotary take` : power(machine),
    air: say`${air(machine)}${rotary === null ? [] : say`; the rotary ${of(rotary, 'bar', 'air', 'bar')}`}`,
    lifting: lifted(rotary, at),
    hook:
      rotary === null
        ? say`nothing is lifted off`
        : say`door sill or table (${of(machine, 'mm', 'table', 'height')}), whichever is higher; rotary
            ${of(rotary, 'mm', 'height')}; slings above it`,
  };
}

export const standing = (machine: RowAt<Machine>): Said =>
  say`${of(machine, 'mm', 'footprint', 0)} wide, ${of(machine, 'mm', 'footprint', 1)} deep`;

export const room = (machine: RowAt<Machine>): Said =>
  say`room to work ${of(machine, 'mm', 'service', 'left')} on the left, ${of(machine, 'mm', 'service', 'right')} on the
    right, ${of(machine, 'mm', 'service', 'front')} in front, ${of(machine, 'mm', 'service', 'rear')} behind`;

export const shipped = (machine: RowAt<Machine>): Said =>
  say`${of(machine, 'mm', 'shipping', 0)} long, ${of(machine, 'mm', 'shipping', 1)} wide, ${of(machine, 'mm', 'shipping', 2)} high`;

export const power = (machine: RowAt<Machine>): Said =>
  say`${of(machine, 'kVA', 'power', 'kVA')} at ${of(machine, 'V', 'power', 'volts')}, phases: ${of(machine, '', 'power', 'phases')}`;

export const air = (machine: RowAt<Machine>): Said =>
  say`${of(machine, 'L/min', 'air', 'flow')} at ${of(machine, 'bar', 'air', 'bar')}`;

/** A column spacer makes the machine higher. */
function spacer(machine: RowAt<Machine>, { arrangement }: ArrangementAt): Said {
  const index = machine.row.clearance.findIndex(
    ({ kind, height: adds }) => adds > 0 && arrangement.clearance.includes(kind),
  );
  return index < 0
    ? []
    : say`, ${of(machine, 'mm', 'clearance', index, 'height')} more with the column spacer`;
}

function lifted(rotary: RowAt<Rotary> | null, { arrangement, path }: ArrangementAt): Said {
  if (rotary === null) return say`nothing: the table is built in`;
  const plates = arrangement.plates.map((_, index) => number([...path, 'plates', index, 'mass'], 'kg'));
  const plate = plates.length === 0 ? [] : say`, with plates of ${enumerate(plates)}`;
  return say`${of(rotary, 'kg', 'mass')}${plate}, lifting points: ${of(rotary, '', 'liftingPoints')}`;
}
