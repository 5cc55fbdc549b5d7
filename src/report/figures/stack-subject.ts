import type { Part } from '../../questions/answers.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Arrangement, Decision } from '../../rules/decision.ts';
import type { ArrangementAt, CheckAt } from '../checks-at.ts';
import { type KnownPart, knownPart, type Rows, rowsOf } from './known-stack.ts';
import { tightestPart } from './tightest-part.ts';
import type { TiltedView } from './tilted-view.ts';

/** The checks of heights over a tilt axis. */
export const HEIGHT_CHECKS = ['reach-high', 'reach-low', 'index-clear', 'table-clear'] as const;
export type HeightCheck = (typeof HEIGHT_CHECKS)[number];

const isHeight = (check: CheckId): check is HeightCheck =>
  (HEIGHT_CHECKS as readonly CheckId[]).includes(check);

/** What an elevation is about: one family on one arrangement, and its checks of heights. */
export interface StackSubject {
  readonly decision: Decision;
  readonly at: ArrangementAt;
  readonly rows: Rows;
  readonly view: TiltedView;
  readonly part: Part;
  readonly partIndex: number;
  readonly known: KnownPart;
  readonly checks: Readonly<Partial<Record<HeightCheck, CheckAt>>>;
  /** the one that gives way first */
  readonly tightest: HeightCheck;
}

/**
 * The family at which a check of heights is worst: of those that the arrangement holds, or where it does not pass of all. Null where
 * it cannot be looked at so.
 */
export function stackSubject(
  decision: Decision,
  at: ArrangementAt,
  viewOf: (arrangement: Arrangement, rows: Rows) => TiltedView | null,
): StackSubject | null {
  const rows = rowsOf(decision, at.arrangement);
  const view = rows === null ? null : viewOf(at.arrangement, rows);
  if (rows === null || view === null) return null;
  const found = tightestPart(decision, at, isHeight);
  if (found === null || !isHeight(found.worst.result.check)) return null;
  const { part, index: partIndex, own } = found;
  return {
    decision,
    at,
    rows,
    view,
    part,
    partIndex,
    known: knownPart(part),
    checks: Object.fromEntries(own.map((each) => [each.result.check, each])),
    tightest: found.worst.result.check,
  };
}
