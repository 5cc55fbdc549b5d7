import type { CutDetail, Part } from '../answers.ts';

/** A cut of which no number is known. Interrupted, since that asks more of the brakes. */
export const UNKNOWN_CUT: CutDetail = {
  diameter: 'unknown',
  teeth: 'unknown',
  ap: 'unknown',
  ae: 'unknown',
  fz: 'unknown',
  vc: 'unknown',
  interrupted: true,
};

/** Whether the numbers of the cut itself are asked for. */
export const isDetailed = (part: Part): boolean => typeof part.cut !== 'string';

/** The cut of a part whose cut is detailed; one of which nothing is known otherwise. */
export const detailOf = (part: Part): CutDetail => (typeof part.cut === 'string' ? UNKNOWN_CUT : part.cut);
