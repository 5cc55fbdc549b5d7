import type { Provenance } from '../../catalog/catalog.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph, table } from '../blocks/block.ts';
import { data, type Inline, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { arrangementAt } from '../checks-at.ts';
import { machineName, rotaryName } from '../names.ts';

/** Where the numbers of the recommended rows come from: a catalog is only as good as its source. */
export function sources(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) return [];
  const { machine, rotary } = at.arrangement;
  const { machines, rotaries } = decision.inputs.catalog;
  const rows = [
    ...machines.flatMap((row, index) =>
      row.id === machine
        ? [sourceRow(machineName(decision, machine, [...at.path, 'machine']), row.from, ['machines', index])]
        : [],
    ),
    ...rotaries.flatMap((row, index) =>
      row.id === rotary && rotary !== null
        ? [sourceRow(rotaryName(decision, rotary, [...at.path, 'rotary']), row.from, ['rotaries', index])]
        : [],
    ),
  ];
  return [
    heading(2, say`Where the catalog values come from`),
    paragraph(
      say`Have the seller confirm the values that the tightest checks rest on, in writing, for the very machine and
        rotary on offer.`,
    ),
    table(
      [
        [say`Row`, 'left'],
        [say`Maker`, 'left'],
        [say`Document`, 'left'],
        [say`Date`, 'left'],
      ],
      rows,
    ),
  ];
}

function sourceRow(name: readonly Inline[], from: Provenance, row: Path): readonly (readonly Inline[])[] {
  const at = (key: 'maker' | 'document' | 'date'): readonly Inline[] =>
    from[key] === 'unknown' ? [words('not stated')] : [data(['inputs', 'catalog', ...row, 'from', key])];
  return [name, at('maker'), at('document'), at('date')];
}
