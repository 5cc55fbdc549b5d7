import type { Point } from '../../drawing/scene.ts';
import type { TipBox } from '../../mechanics/geometry/tip-box.ts';
import { unionBox } from '../../mechanics/geometry/union-box.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';
import { type ArrangementAt, type CheckAt, checksAt, ofCoveredParts, worstFirst } from '../checks-at.ts';
import { aroundTips } from './around-tips.ts';
import { type KnownPart, knownPart, plain, type Rows, rowsOf } from './known-stack.ts';
import { type OnTable, onTable } from './on-table.ts';
import { tiltsOf, tipsAt } from './tips-at.ts';

/** Checks whose numbers are lengths on the table. */
const TABLE_CHECKS: readonly CheckId[] = ['table-footprint', 'travel-x', 'travel-y', 'column'];

/** One way in which the rotary can stand. */
export interface Standing {
  readonly at: ArrangementAt;
  readonly rows: Rows;
  readonly lies: OnTable;
  /** at the largest work that it holds, of all where it holds none */
  readonly swing: CheckAt | null;
  /** the longest of the same work, as it lies on a level axis */
  readonly longest: KnownPart | null;
  /** of the checks on the table the one that gives way first */
  readonly worst: CheckAt | null;
  /** where the tips of its part come, at the lower left and the upper right; null where it is about no part, or not known */
  readonly tips: readonly [Point, Point] | null;
}

/** Null where nothing stands on a table, where its size is not known, or where the spindle is level. */
export function standingOf(decision: Decision, at: ArrangementAt): Standing | null {
  const rows = rowsOf(decision, at.arrangement);
  const lies = onTable(at.arrangement);
  if (rows === null || rows.rotary === null || lies === null || rows.machine.spindle !== 'vertical')
    return null;
  const size = rows.machine.table?.size.map(plain) ?? [null];
  if (size.includes(null)) return null;
  const isSwing = ({ result }: CheckAt): boolean => result.check === 'swing' && plain(result.need) !== null;
  const covered = ofCoveredParts(at).filter(isSwing);
  // what holds nothing is looked at with whatever there is
  const swings = covered.length > 0 ? covered : checksAt(at).filter(isSwing);
  const largest = swings.toSorted((a, b) => Number(b.result.need) - Number(a.result.need))[0] ?? null;
  const asked = at.arrangement.passes === 'yes' ? ofCoveredParts(at) : checksAt(at);
  const [worst = null] = worstFirst(asked.filter(({ result }) => TABLE_CHECKS.includes(result.check)));
  return {
    at,
    rows,
    lies,
    swing: largest,
    longest: longestOf(decision, swings),
    worst,
    tips: worst === null ? null : tipsOf(decision, rows, lies, worst),
  };
}

function longestOf(decision: Decision, swings: readonly CheckAt[]): KnownPart | null {
  const lengthOf = ({ fixtureHeight, height }: KnownPart): number => (fixtureHeight ?? 0) + (height ?? 0);
  const known = decision.inputs.answers.parts
    .filter(({ name }) => swings.some(({ result }) => result.part === name))
    .map(knownPart);
  return known.toSorted((a, b) => lengthOf(b) - lengthOf(a))[0] ?? null;
}

/** The union over all tilts; where axes move in the cut, the tips come where no box of this kind says. */
function tipsOf(
  { inputs: { answers } }: Decision,
  { table }: Rows,
  lies: OnTable,
  { result }: CheckAt,
): Standing['tips'] {
  const part = answers.parts.find(({ name }) => name === result.part);
  const [p, cutter] = [plain(table.faceOffset), plain(answers.tools.largestCutter)];
  if (part === undefined || p === null || cutter === null || part.motion !== 'positional') return null;
  const known = knownPart(part);
  const all = tiltsOf(part).map((tilt) => tipsAt(part, known, p, cutter / 2, tilt));
  const boxes: readonly (TipBox | null)[] = table.tilt === null ? [aroundTips(part, known, cutter / 2)] : all;
  const found = boxes.filter((each) => each !== null);
  if (found.length === 0) return null;
  const { u, v } = unionBox(found);
  return lies.rectangle(u, v);
}
