import type { Decision, FeatureNeed } from '../../rules/decision.ts';
import type { FeatureId } from '../../rules/features/ids.ts';

/**
 * What a feature comes to in a decision: in the first arrangement that passes, else in the first. Undefined where that says
 * nothing of it.
 */
export const featureNeedIn = ({ arrangements }: Decision, id: FeatureId): FeatureNeed | undefined =>
  (arrangements.find(({ passes }) => passes === 'yes') ?? arrangements[0])?.features.find(
    ({ feature }) => feature === id,
  );
