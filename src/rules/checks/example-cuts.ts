/**
 * A cut whose force can be worked out in the head: plastic, whose specific force of 750 N/mm² does not
 * depend on the chip; half the diameter wide, so that one of two teeth cuts and the thickest chip is the feed
 * per tooth: 750 · 13.333 · 0.1 = 1000 N. At 100 m/min and 20 mm it turns at 1591.55 rev/min.
 */
export const CUT_OF_1000_N = {
  diameter: 20,
  teeth: 2,
  ap: 40 / 3,
  ae: 10,
  fz: 0.1,
  vc: 100,
  interrupted: false,
} as const;

export const PLASTIC = { material: 'plastic' } as const;
