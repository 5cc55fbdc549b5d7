import { spanOf } from '../../drawing/lanes.ts';
import type { Dimension } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { MOUNTING_WORDS } from '../wording/arrangement.ts';
import { isSame, measured } from './figure.ts';
import { plain, type Rows } from './known-stack.ts';
import { baseOf } from './on-table.ts';
import { tableCheckMeasures } from './table-check-measures.ts';
import type { Standing } from './table-standing.ts';

/** All that is measured on a table: itself, what stands on it, what stays free, and the check that gives way first. */
export function tablePlanMeasures(decision: Decision, way: Standing): readonly Dimension[] {
  const judged = tableCheckMeasures(decision, way);
  // the base is measured once: as the verdict's need where a check is about it
  const rotary = rotaryMeasures(decision, way).filter(
    (each) => !judged.some((other) => isSamePlace(each, other)),
  );
  return [...tableMeasures(decision, way.rows), ...rotary, ...freeMeasures(decision, way), ...judged];
}

const isSamePlace = (a: Dimension, b: Dimension): boolean =>
  spanOf(a).every((end, index) => a.side === b.side && isSame(end, spanOf(b)[index] ?? Number.NaN));

/** What is measured on one of two tables says on which. */
export const onWhich = (
  { at: { arrangement } }: Pick<Standing, 'at'>,
  name: readonly Inline[],
): readonly Inline[] => say`${name} (${words(MOUNTING_WORDS[arrangement.mounting])})`;

function tableMeasures(decision: Decision, { machine, machinePath: row }: Rows): readonly Dimension[] {
  const half = (value: number | null): number => (value ?? 0) / 2;
  const [wide = null, deep = null] = machine.table?.size.map(plain) ?? [];
  const [travelX, travelY] = [half(plain(machine.travel[0])), half(plain(machine.travel[1]))];
  const level = (name: readonly Inline[], path: Path, x: number, y: number): readonly Dimension[] =>
    measured(decision, { name, path, from: [-x, y], side: 'above' });
  const upright = (name: readonly Inline[], path: Path, x: number, y: number): readonly Dimension[] =>
    measured(decision, { name, path, from: [x, -y], side: 'right' });
  return [
    ...level(say`length of the table`, [...row, 'table', 'size', 0], half(wide), half(deep)),
    ...level(say`X travel`, [...row, 'travel', 0], travelX, travelY),
    ...upright(say`depth of the table`, [...row, 'table', 'size', 1], half(wide), half(deep)),
    ...upright(say`Y travel`, [...row, 'travel', 1], travelX, travelY),
  ];
}

/** The base as long as it is along and across its axis, and the circle of the largest work. */
function rotaryMeasures(decision: Decision, way: Standing): readonly Dimension[] {
  const { at, rows, lies, swing } = way;
  const { rotary, tablePath: row } = rows;
  const base = rotary === null ? null : baseOf(rotary);
  if (rotary === null || base === null) return [];
  const [low] = lies.rectangle(...base);
  const alongX = at.arrangement.mounting.endsWith('along-x');
  const need = plain(swing?.result.need ?? null);
  return [
    ...measured(decision, {
      name: onWhich(way, say`base along X`),
      path: [...row, 'base', alongX ? 'along' : 'across'],
      from: low,
      side: 'below',
    }),
    ...measured(decision, {
      name: onWhich(way, say`base along Y`),
      path: [...row, 'base', alongX ? 'across' : 'along'],
      from: low,
      side: 'left',
    }),
    ...(swing === null || need === null || rotary.tilt === null
      ? []
      : measured(decision, {
          name: onWhich(way, say`circle of the largest work`),
          path: [...swing.path, 'need'],
          from: [lies.center[0] - need / 2, lies.center[1]],
          side: 'below',
        })),
  ];
}

/** What stays free of the table to the left and to the right of rotary and work. */
function freeMeasures(decision: Decision, way: Standing): readonly Dimension[] {
  const { at, rows } = way;
  const [wide = null, deep = null] = rows.machine.table?.size.map(plain) ?? [];
  const right = plain(at.arrangement.space?.right ?? null);
  if (wide === null || deep === null || at.arrangement.space === null) return [];
  const edge = (x: number) => [x, -deep / 2] as const;
  const free = (name: readonly Inline[], key: 'left' | 'right', x: number): readonly Dimension[] =>
    measured(decision, {
      name: onWhich(way, name),
      path: [...at.path, 'space', key],
      from: edge(x),
      side: 'below',
    });
  return [
    ...free(say`free on the left`, 'left', -wide / 2),
    ...(right === null ? [] : free(say`free on the right`, 'right', wide / 2 - right)),
  ];
}
