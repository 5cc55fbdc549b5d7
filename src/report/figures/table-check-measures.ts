import type { Dimension, Side } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { say, words } from '../blocks/inline.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { isSame, measured } from './figure.ts';
import { plain } from './known-stack.ts';
import { baseOf } from './on-table.ts';
import { onWhich } from './table-measures.ts';
import type { Standing } from './table-standing.ts';

/** Where a stretch begins along X (0) or Y (1), and which way it runs from there. */
interface Stretch {
  readonly axis: 0 | 1;
  readonly begins: number;
  readonly runs: 1 | -1;
}

/** Need, have and margin of the check on the table that gives way first, along the way that it speaks of. */
export function tableCheckMeasures(decision: Decision, way: Standing): readonly Dimension[] {
  const { worst } = way;
  const [need, have] = [plain(worst?.result.need ?? null), plain(worst?.result.have ?? null)];
  const stretch =
    worst === null || need === null || have === null ? null : stretchOf(decision, way, need, have);
  if (worst === null || need === null || have === null || stretch === null) return [];
  const { axis, begins, runs } = stretch;
  // from the edges of the table, so that no line runs across what stands on it
  const [x, y] = edgesOf(way);
  const side: Side = axis === 0 ? 'below' : 'left';
  const name = words(CHECK_WORDS[worst.result.check].name);
  const measure = (what: string, key: 'need' | 'have' | 'margin', at: number): readonly Dimension[] =>
    measured(decision, {
      name: onWhich(way, say`${name}, ${words(what)}`),
      path: [...worst.path, key],
      from: axis === 0 ? [at, y] : [x, at],
      side,
      tight: key === 'margin',
    });
  // a measure runs to the right or up: one that is counted the other way begins at its far end
  const from = (long: number): number => (runs === 1 ? begins : begins - long);
  return [
    ...measure('needed', 'need', from(need)),
    ...measure('there is', 'have', from(have)),
    ...measure('margin', 'margin', runs === 1 ? begins + need : begins - have),
  ];
}

const edgesOf = ({ rows: { machine } }: Standing): readonly [left: number, front: number] => {
  const [wide = null, deep = null] = machine.table?.size.map(plain) ?? [];
  return [-(wide ?? 0) / 2, -(deep ?? 0) / 2];
};

/** Null where the numbers of the check are none that are laid out here. */
function stretchOf(decision: Decision, way: Standing, need: number, have: number): Stretch | null {
  switch (way.worst?.result.check) {
    case 'table-footprint':
      return baseStretch(decision, way, need, have);
    case 'travel-x':
      return travelStretch(way, 0, need, have);
    case 'travel-y':
      return travelStretch(way, 1, need, have);
    case 'column':
      return way.tips === null ? null : { axis: 1, begins: way.tips[0][1], runs: 1 };
    default:
      return null;
  }
}

/** The base, which may stand over the table by as much as is allowed. */
function baseStretch(
  { inputs: { assume } }: Decision,
  { rows: { rotary, machine }, lies }: Standing,
  need: number,
  have: number,
): Stretch | null {
  const base = rotary === null ? null : baseOf(rotary);
  if (base === null) return null;
  const [low, high] = lies.rectangle(...base);
  const axis = ([0, 1] as const).find(
    (each) =>
      isSame(need, high[each] - low[each]) &&
      isSame(have, (plain(machine.table?.size[each]) ?? Number.NaN) + assume.tableOverhang),
  );
  return axis === undefined ? null : { axis, begins: low[axis], runs: 1 };
}

/** All the tips, or those to one side of the rotary center. */
function travelStretch(
  { rows: { machine }, lies, tips }: Standing,
  axis: 0 | 1,
  need: number,
  have: number,
): Stretch | null {
  const travel = plain(machine.travel[axis]);
  if (travel === null) return null;
  const center = lies.center[axis];
  if (tips !== null && isSame(have, travel) && isSame(need, tips[1][axis] - tips[0][axis])) {
    return { axis, begins: tips[0][axis], runs: 1 };
  }
  if (isSame(have, travel / 2 - center)) return { axis, begins: center, runs: 1 };
  return isSame(have, travel / 2 + center) ? { axis, begins: center, runs: -1 } : null;
}
