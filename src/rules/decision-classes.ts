import type { Class } from '../catalog/catalog.ts';
import type { Bounded } from './check-result.ts';
import type { ClassRuleId } from './classes/rule-ids.ts';

/** Which kind of rotary, and why not the others: what `decide` finds, as data. */

export const FINDINGS = ['suits', 'possible', 'ruled out'] as const;
export type Finding = (typeof FINDINGS)[number];

export const SIDES = ['for', 'against', 'rules out'] as const;
export type ArgumentSide = (typeof SIDES)[number];

/** One reason: a number of this shop and catalog, held against a line. */
export interface Argument<Rule extends string = ClassRuleId> {
  readonly rule: Rule;
  readonly side: ArgumentSide;
  /** false: it depends on what is not known whether this speaks at all */
  readonly sure: boolean;
  readonly number: Bounded;
  readonly limit: Bounded;
  readonly unit: string;
  /** the families that it is about, most hours first; empty where it is about none in particular */
  readonly parts: readonly string[];
  readonly source: string;
  /** what leaves it open: paths of answers and catalog values */
  readonly openOn: readonly string[];
}

/** How many arrangements of a kind there are, how many pass, and the best of them. */
export interface Tally {
  readonly count: number;
  /** surely, and at most */
  readonly passing: Bounded;
  /** the best that passes, else the nearest miss; null: there is none at all */
  readonly best: string | null;
  readonly bestPasses: 'yes' | 'open' | 'no' | null;
}

export interface ClassFinding extends Tally {
  readonly class: Class;
  readonly finding: Finding;
  readonly for: readonly Argument[];
  /** what rules it out first */
  readonly against: readonly Argument[];
}
