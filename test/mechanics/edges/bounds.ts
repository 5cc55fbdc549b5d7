/** Just below nothing: what a bound at 0 refuses. */
export const BELOW = -1e-6;
/** No number at all. */
export const NONE = Number.NaN;
export const WITHOUT_BOUND = Number.POSITIVE_INFINITY;
