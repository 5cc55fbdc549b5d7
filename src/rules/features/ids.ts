/** What can be ordered or has to be had, in the order in which it is listed. */
export const FEATURE_IDS = [
  'axisDrives',
  'toolCenterPoint',
  'rotatingWorkOffset',
  'tiltedWorkPlane',
  'spindleProbe',
  'toolSetter',
  'lookAhead',
  'camPost',
  'longHolders',
  'throughSpindleCoolant',
  'chipConveying',
  'mistAndFire',
] as const;
export type FeatureId = (typeof FEATURE_IDS)[number];

/** Why a feature is needed or not; the words are in the report. */
export const FEATURE_REASONS = [
  'axes-to-drive',
  'axes-driven',
  'all-axes-move',
  'axes-stand-braked',
  'loaded-off-center',
  'saves-at-setups',
  'goes-with-work-offset',
  'one-axis-only',
  'error-by-hand',
  'saves-at-tools',
  'blocks-too-slow',
  'blocks-ahead-too-few',
  'control-keeps-up',
  'no-contours',
  'tilt-nobody-sees',
  'one-axis-program',
  'tool-too-short',
  'long-tool-in-use',
  'tools-reach',
  'hole-deep',
  'tough-material',
  'holes-shallow',
  'chips-many',
  'chips-few',
  'chips-burn',
  'chips-do-not-burn',
] as const;
export type FeatureReason = (typeof FEATURE_REASONS)[number];
