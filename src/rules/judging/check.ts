import type { CheckExample } from '../checks/example.ts';
import type { CheckId } from '../checks/ids.ts';
import type { MeasureToTake, Remedy } from '../decision.ts';
import type { StageId } from '../stages/index.ts';
import type { Case } from './case.ts';
import type { Side } from './side.ts';
import type { Hanging } from './value.ts';

/** at-most: the need must not exceed the have. at-least: the have is a floor that the need must not fall below. */
export type Sense = 'at-most' | 'at-least';

/** A second threshold: the check holds once the measure is taken. All of its comparisons must hold. */
export interface EasingRule {
  readonly measure: MeasureToTake;
  readonly when?: (of: Case) => boolean;
  readonly all: readonly {
    readonly need: Side;
    readonly have: Side;
    readonly sense?: Sense;
  }[];
  /** how much of the measure is needed */
  readonly amount?: Side;
  readonly unit?: string;
}

/** Whether a comparison counts in a case, and what it hangs on where that is not sure. */
export interface Meets {
  readonly is: 'yes' | 'perhaps' | 'no';
  readonly on: readonly Hanging[];
}

export interface Comparison {
  readonly what: string;
  /** where it is not the unit of the check */
  readonly unit?: string;
  readonly need: Side;
  readonly have: Side;
  readonly when?: (of: Case) => boolean;
  /** the comparison counts only where something surely or perhaps meets; default: it does */
  readonly meets?: (of: Case) => Meets;
  readonly easings?: readonly EasingRule[];
  /** reported only where it is worse than the others */
  readonly secondary?: boolean;
}

export interface Check {
  readonly id: CheckId;
  readonly stage: StageId;
  readonly about: 'part' | 'arrangement';
  readonly unit: string;
  readonly sense: Sense;
  readonly applies: (of: Case) => boolean;
  /** the same for every case, or made for one: then nothing of it is kept */
  readonly comparisons: readonly Comparison[] | ((of: Case) => readonly Comparison[]);
  /** open because of a gap that is no answer and not essential: shown, but enters no verdict */
  readonly advisory?: (of: Case) => boolean;
  /** a yes or no in numbers: its margin is no distance and is left out of the measure *margin* */
  readonly categorical?: boolean;
  /** the measure *margin* divides by the Z travel rather than by the need */
  readonly marginOverTravel?: boolean;
  readonly formula: string;
  readonly source: string;
  /** what can be changed so that it holds, the easiest first */
  readonly remedies: readonly Remedy[];
  readonly examples: readonly CheckExample[];
}

/** Declares a check. The declaration is all there is: verdict, intervals, trace and flips come from it. */
export const defineCheck = (check: Check): Check => check;
