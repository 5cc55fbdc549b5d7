import type { CheckId } from './checks/ids.ts';
import type { StageId } from './stages/index.ts';

export const VERDICTS = ['holds', 'holds if', 'open', 'fails'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** A number; both ends where something is unknown; null where nothing bounds it. */
export type Bounded = number | readonly [low: number | null, high: number | null] | null;

/** What has to be done so that a check holds. */
export const MEASURES_TO_TAKE = [
  'rigid-fixture',
  'adapter-plate',
  'bolts-on-table',
  'longer-tool-there',
  'buy-longer-tool',
  'raise-fixture',
  'move-aside',
  'tailstock',
  'spindle-probe',
  'tool-center-point',
  'rotating-work-offset',
  'tilted-work-plane',
  'look-ahead',
  'axis-drives',
  'transformer',
  'phase-converter',
  'stays-on',
] as const;
export type MeasureToTake = (typeof MEASURES_TO_TAKE)[number];

/** What can be changed so that a failing check holds. */
export type Remedy =
  | 'larger-rotary'
  | 'more-tilt'
  | 'smaller-part'
  | 'lighter-fixture'
  | 'lighter-cut'
  | 'shorter-tools'
  | 'longer-tools'
  | 'lowered-table'
  | 'column-spacer'
  | 'riser'
  | 'adapter-plate'
  | 'other-mounting'
  | 'larger-machine'
  | 'spindle-probe'
  | 'lower-fixture'
  | 'raise-fixture'
  | 'centered-part'
  | 'other-class'
  | 'slower-feed'
  | 'ask-the-seller'
  | 'stronger-spindle'
  | 'tailstock'
  | 'other-control'
  | 'other-bay'
  | 'smaller-machine'
  | 'larger-opening'
  | 'ask-an-engineer'
  | 'stronger-floor'
  | 'larger-supply'
  | 'larger-compressor'
  | 'stronger-hoist'
  | 'higher-hook'
  | 'vises-beside'
  | 'more-budget';

export interface Easing {
  readonly measure: MeasureToTake;
  /** how much of it, e.g. the length of the tool */
  readonly amount: Bounded;
  readonly unit: string;
}

/** A value that decides and is not known. */
export interface Gap {
  /** `parts[Lock gate hinge].depthSide`, `rotaries[wren].swing` */
  readonly path: string;
  readonly ask: 'user' | 'seller';
  /** a catalog value that is missing but without which nothing can be said */
  readonly essential: boolean;
}

export interface CheckResult {
  readonly check: CheckId;
  readonly stage: StageId;
  /** null: the check is about the arrangement, not about one part */
  readonly part: string | null;
  readonly verdict: Verdict;
  /** shows open and goes to the seller, but enters no verdict */
  readonly advisory: boolean;
  readonly need: Bounded;
  readonly have: Bounded;
  readonly unit: string;
  /** positive is always good */
  readonly margin: Bounded;
  /** margin ÷ |need| */
  readonly relativeMargin: Bounded;
  /** which of the terms decides, e.g. `the work`, `slant side` */
  readonly binding: string;
  readonly inputs: Readonly<Record<string, Bounded>>;
  /** the unit of each input, by the same names */
  readonly inputUnits?: Readonly<Record<string, string>>;
  readonly formula: string;
  readonly source: string;
  /** a yes or no in numbers: never among the tightest checks */
  readonly categorical?: boolean;
  readonly easing: Easing | null;
  /** of a check that fails: what can be changed, the easiest first */
  readonly remedies: readonly Remedy[];
  readonly gaps: readonly Gap[];
}
