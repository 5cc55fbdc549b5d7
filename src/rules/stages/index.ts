/** The decision tree, in order. */
export const STAGES = ['envelope', 'rotary-class', 'fit', 'clearance', 'features', 'shop'] as const;
export type StageId = (typeof STAGES)[number];
