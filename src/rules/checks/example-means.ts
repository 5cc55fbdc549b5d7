import { BLANK_MEANS } from '../../questions/lifting/means.ts';

/** Means of lifting for examples: what is left out is not known, or assumed. */
export const EXAMPLE_HOIST = {
  ...BLANK_MEANS,
  by: 'hoist',
  capacity: 500,
  hookHeight: 2600,
  legs: 2,
  slingAngle: 60,
  slingHeight: 500,
  rigging: 10,
} as const;
export const EXAMPLE_FORKLIFT = { ...BLANK_MEANS, by: 'forklift', capacity: 1500, loadCenter: 500 } as const;
export const EXAMPLE_HANDS = { ...BLANK_MEANS, by: 'hand', people: 2 } as const;
