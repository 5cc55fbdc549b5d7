import type { Feature } from '../../catalog/catalog.ts';
import type { FeatureNeed } from '../../rules/decision.ts';

/** Features of control and spindle, called by what they do. */
export const FEATURE_WORDS: Readonly<Record<Feature | 'axisDrives', string>> = {
  axisDrives: 'axis drives',
  toolCenterPoint: 'tool center point control',
  rotatingWorkOffset: 'rotating work offset',
  tiltedWorkPlane: 'tilted work plane',
  spindleProbe: 'spindle probe',
  toolSetter: 'tool setter',
  lookAhead: 'look-ahead contouring',
};

/** The words for a feature's name; undefined where it has none and stands for itself. */
export const featureWords = (feature: string): string | undefined =>
  Object.hasOwn(FEATURE_WORDS, feature) ? FEATURE_WORDS[feature as keyof typeof FEATURE_WORDS] : undefined;

export const FEATURE_NEED_WORDS: Readonly<Record<FeatureNeed['need'], string>> = {
  required: 'required',
  'pays for itself': 'pays for itself',
  'worth having': 'worth having',
  'not needed': 'not needed',
};
