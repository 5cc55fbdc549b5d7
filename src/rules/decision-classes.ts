import type { Class } from '../catalog/catalog.ts';
import type { Bounded } from './check-result.ts';
import type { RouteRuleId } from './classes/routes/rule-ids.ts';
import type { ClassRuleId } from './classes/rule-ids.ts';

/** Which kind of rotary, and why not the others: what `decide` finds, as data. */

export const FINDINGS = ['suits', 'possible', 'ruled out'] as const;
export type Finding = (typeof FINDINGS)[number];

export type ArgumentSide = 'for' | 'against' | 'rules out';

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

/** The ways to five axes. */
export const ROUTES = ['own-mill', 'new-mill', 'convertible', 'built-in', 'single-axis'] as const;
export type RouteId = (typeof ROUTES)[number];

export interface RouteFinding extends Tally {
  readonly route: RouteId;
  readonly finding: Finding;
  readonly for: readonly Argument<RouteRuleId>[];
  readonly against: readonly Argument<RouteRuleId>[];
}

/** What the mill that is owned can take, and what the next purchase would add to the best of it. */
export interface OwnMill {
  readonly machine: string;
  /** rotaries with which it surely passes, best first, each in its best mounting */
  readonly takes: readonly {
    readonly id: string;
    readonly rotary: string;
    readonly coverage: Bounded;
    readonly price: Bounded;
  }[];
  /** the cheapest that covers surely more; null: nothing in the catalog does */
  readonly next: {
    readonly id: string;
    readonly coverage: Bounded;
    readonly price: Bounded;
    readonly addsHours: Bounded;
    readonly addsPrice: Bounded;
  } | null;
}

/** The route to five axes. */
export interface Route {
  readonly routes: readonly RouteFinding[];
  /** null: no mill is owned, or none of this catalog */
  readonly ownMill: OwnMill | null;
}

/** A rotary, or a machine with a table of its own, as a size. */
export interface Size {
  readonly rotary: string | null;
  readonly machine: string;
  readonly swing: number;
  /** of the rotary, or of the machine where the table is its own */
  readonly price: Bounded;
  readonly mass: Bounded;
  /** length of its base along X as it is mounted, or diameter of the faceplate */
  readonly length: Bounded;
}

/** The next size up of the class of the winner: what it adds, and what it costs more. */
export interface SizeUp extends Size {
  /** families that turn within it and not within the one that is chosen */
  readonly addsParts: readonly string[];
  readonly addsHours: Bounded;
  readonly addsShare: Bounded;
  readonly morePrice: Bounded;
  readonly moreMass: Bounded;
  readonly moreLength: Bounded;
  /** the best arrangement with it, and what that one covers and leaves in room */
  readonly best: string;
  readonly bestPasses: 'yes' | 'open' | 'no';
  readonly coverage: Bounded;
  readonly viseStations: Bounded;
}

/** Would a bigger one help? Null where nothing is recommended. */
export interface Bigger {
  readonly chosen: Size;
  readonly coverage: Bounded;
  readonly viseStations: Bounded;
  /** null: nothing larger of its class in the catalog */
  readonly next: SizeUp | null;
}
