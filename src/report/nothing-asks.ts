import type { Decision } from '../rules/decision.ts';

/** Every family is cut from the top alone, so that there is nothing to hold against a rotary. */
export const nothingAsksForFiveAxes = ({ hours, threeAxis }: Decision): boolean =>
  threeAxis.length > 0 && Object.keys(hours).every((name) => threeAxis.includes(name));
