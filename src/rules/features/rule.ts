import type { Feature } from '../../catalog/catalog.ts';
import type { Answers, Part } from '../../questions/answers.ts';
import type { CheckId } from '../checks/ids.ts';
import type { ClassExampleGiven } from '../classes/rule.ts';
import type { Need } from '../decision-features.ts';
import type { MachineCase, RotaryCase, ShopCase } from '../judging/case.ts';
import type { Outcome } from '../judging/outcome.ts';
import type { Value } from '../judging/value.ts';
import type { FamilyVerdict } from '../weighing/judged.ts';
import type { FeatureId, FeatureReason } from './ids.ts';

/** What the rules of the features read: one arrangement, and the families that it holds or may hold. */
export interface FeatureGround {
  readonly answers: Answers;
  readonly shop: ShopCase;
  readonly machine: MachineCase;
  readonly rotary: RotaryCase;
  readonly covered: readonly FamilyVerdict[];
  readonly partOf: (name: string) => Part;
  /** the outcomes of a check, with the families that they are about */
  readonly outcomesOf: (check: CheckId) => readonly { readonly name: string; readonly outcome: Outcome }[];
  /** setups a year of the families that are covered */
  readonly setups: Value;
}

/** What a rule finds: `saves` is settled by price and hours. */
export interface FeatureFound {
  readonly need: Exclude<Need, 'pays for itself'> | 'saves';
  readonly sure: boolean;
  readonly why: FeatureReason;
  readonly number: Value;
  readonly limit: Value;
  readonly parts: readonly string[];
  /** hours saved a year */
  readonly hours: Value | null;
}

export interface FeatureExample {
  readonly what: string;
  readonly given: ClassExampleGiven;
  readonly need: Need;
  readonly number?: number;
}

export interface FeatureRule {
  readonly id: FeatureId;
  /** where the catalog offers it; null: it offers no such thing */
  readonly offer: Feature | null;
  readonly unit: string;
  readonly find: (of: FeatureGround) => FeatureFound;
  readonly source: string;
  readonly examples: readonly FeatureExample[];
}

export const defineFeature = (rule: FeatureRule): FeatureRule => rule;
