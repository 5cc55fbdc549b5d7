import type { FeatureNeed } from '../../rules/decision.ts';
import type { FeatureGround } from '../../rules/features/rule.ts';
import { FEATURE_LESSONS } from '../words/features.ts';
import type { Stretch } from './stretch.ts';

/** How a feature comes to its number N and its line L, and what it saves; null: there is no way on paper. */
export type FeatureWay = (of: FeatureGround, need: FeatureNeed) => Stretch | null;

export const words = ({ feature }: FeatureNeed): string => FEATURE_LESSONS[feature].number;
export const lineWords = ({ feature }: FeatureNeed): string => FEATURE_LESSONS[feature].limit;
