import type { Bounded } from './check-result.ts';
import type { FeatureId, FeatureReason } from './features/ids.ts';

export const NEEDS = ['required', 'pays for itself', 'worth having', 'not needed'] as const;
export type Need = (typeof NEEDS)[number];

/** Something to order or to have, with the number that says so. */
export interface FeatureNeed {
  readonly feature: FeatureId;
  readonly need: Need;
  /** false: it depends on what is not known whether it is needed so much */
  readonly sure: boolean;
  readonly why: FeatureReason;
  readonly number: Bounded;
  readonly limit: Bounded;
  readonly unit: string;
  /** the families that it is about */
  readonly parts: readonly string[];
  /** it comes with the machine; is offered at a price; is not offered; or no catalog says */
  readonly there: 'standard' | 'offered' | 'not offered' | 'ask';
  /** null: ask the seller */
  readonly price: Bounded;
  /** null: not by saving time */
  readonly savesHours: Bounded;
  /** hours saved × shop rate × years; null where no hours are saved */
  readonly savesMoney: Bounded;
  readonly source: string;
  /** what leaves it open: paths of answers and catalog values */
  readonly openOn: readonly string[];
}
