/** What can hurt someone; said beside the result. The words are in the report. */
export const CAUTIONS = [
  'tilting-table-drops',
  'never-home-with-tool-in-work',
  'lock-out',
  'guard-outside-the-old-guard',
  'unbalanced-work',
  'eye-bolts-at-an-angle',
  'hoist-rating-includes-rigging',
  'machines-tip-on-skates',
  'combustible-chips',
  'forces-are-estimates',
  'licensed-trades-decide',
  'rigid-oversize-fixture',
  'loading-over-housing',
  'learners',
  'ask-the-seller',
] as const;
export type CautionId = (typeof CAUTIONS)[number];
