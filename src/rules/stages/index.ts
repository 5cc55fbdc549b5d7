/** The decision tree, in order; each check names the stage that it belongs to. */
export const STAGES = ['envelope', 'rotary-class', 'fit', 'clearance', 'features', 'shop'] as const;
export type StageId = (typeof STAGES)[number];
