import type { Decision } from '../../rules/decision.ts';
import { type Block, paragraph, table } from '../blocks/block.ts';
import { type Inline, say, words } from '../blocks/inline.ts';
import { machineAt, rotaryAt, rowNumber } from '../catalog-row.ts';
import { arrangementAt } from '../checks-at.ts';
import { machineName, rotaryName } from '../names.ts';
import { air, power, room, shipped, standing } from './site-needs.ts';

/** Where it is open which arrangement wins: what each machine and each rotary asks of the building. */
export function contendersNeeds(decision: Decision): readonly Block[] {
  if (decision.recommended !== null) return [];
  const all = decision.contenders.flatMap((id) => arrangementAt(decision, id) ?? []);
  const used = (key: 'machine' | 'rotary', id: string): boolean =>
    all.some(({ arrangement }) => arrangement[key] === id);
  const { catalog, answers } = decision.inputs;
  const machines = catalog.machines.filter(({ id }) => id !== answers.shop.machine && used('machine', id));
  const rotaries = catalog.rotaries.filter(({ id }) => used('rotary', id));
  return [
    ...shown(
      say`It is open which machine it will be. Each asks for this:`,
      ['Machine', 'Stands on', 'Room around it', 'Height', 'As shipped', 'Mass', 'Power', 'Air'],
      machines.flatMap(({ id }) => machineRow(decision, id)),
    ),
    ...shown(
      say`Each rotary has to be lifted on:`,
      ['Rotary', 'Mass', 'Height', 'Lifting points', 'Air'],
      rotaries.flatMap(({ id }) => rotaryRow(decision, id)),
    ),
  ];
}

type Row = readonly (readonly Inline[])[];

const shown = (lead: readonly Inline[], titles: readonly string[], rows: readonly Row[]): readonly Block[] =>
  rows.length === 0
    ? []
    : [
        paragraph(lead),
        table(
          titles.map((title) => [[words(title)], 'left']),
          rows,
        ),
      ];

function machineRow(decision: Decision, id: string): readonly Row[] {
  const row = machineAt(decision, id);
  if (row === null) return [];
  const name = machineName(decision, id, [...row.path, 'id']);
  const height = [rowNumber(row, 'mm', 'footprint', 2)];
  const mass = [rowNumber(row, 'kg', 'mass')];
  return [[name, standing(row), room(row), height, shipped(row), mass, power(row), air(row)]];
}

function rotaryRow(decision: Decision, id: string): readonly Row[] {
  const row = rotaryAt(decision, id);
  if (row === null) return [];
  const name = rotaryName(decision, id, [...row.path, 'id']);
  const cells = [
    ['kg', 'mass'],
    ['mm', 'height'],
    ['', 'liftingPoints'],
  ] as const;
  return [
    [name, ...cells.map(([unit, key]) => [rowNumber(row, unit, key)]), [rowNumber(row, 'bar', 'air', 'bar')]],
  ];
}
