import type { Part } from '../../questions/answers.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';
import { type ArrangementAt, type CheckAt, checksAt, ofCoveredParts, worstFirst } from '../checks-at.ts';

/** A family of parts, and what is held against it. */
export interface TightestPart {
  readonly part: Part;
  /** of its answers */
  readonly index: number;
  readonly worst: CheckAt;
  /** its checks of the kind that was asked for */
  readonly own: readonly CheckAt[];
}

/**
 * The family at which one of certain checks is worst: of those that the arrangement holds; of all where it does not pass,
 * since there what stands in its way is looked at. Null where no such check is about a family.
 */
export function tightestPart(
  decision: Decision,
  at: ArrangementAt,
  isAsked: (check: CheckId) => boolean,
): TightestPart | null {
  const asked = checksAt(at).filter(({ result }) => isAsked(result.check) && result.part !== null);
  const covered = ofCoveredParts(at).filter(({ result }) => isAsked(result.check) && result.part !== null);
  const [worst] = worstFirst(at.arrangement.passes === 'no' || covered.length === 0 ? asked : covered);
  const { parts } = decision.inputs.answers;
  const index = parts.findIndex(({ name }) => name === worst?.result.part);
  const part = parts[index];
  if (worst === undefined || part === undefined) return null;
  return { part, index, worst, own: asked.filter(({ result }) => result.part === part.name) };
}
