import type { Drill, Part } from '../answers.ts';

/** A hole of which nothing is known: it may be small enough not to matter. */
export const UNKNOWN_DRILL: Drill = {
  diameter: 'unknown',
  feed: 'unknown',
  offset: 'unknown',
};

/** Whether a hole counts, or may. */
export const isDrilled = (part: Part): boolean => part.drill !== null;

/** The hole of a part that has one; one of which nothing is known otherwise. */
export const drillOf = (part: Part): Drill => part.drill ?? UNKNOWN_DRILL;
