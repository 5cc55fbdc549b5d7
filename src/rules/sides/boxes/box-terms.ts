import { tools } from '../../inputs/setting.ts';
import { falls, negated, rises, type Term, term } from '../../judging/term.ts';
import { radiusRises, sweptRadius } from '../stack.ts';

/**
 * Where the tip of the tool has to be for one approach, as terms: along the tilt axis (u), level and across
 * it (v), and up (w). The numbers are those of the tip boxes in mechanics/geometry; here each end is a term,
 * so that unknown answers have a direction.
 */
export interface BoxTerms {
  readonly name: string;
  readonly uLow: readonly Term[];
  readonly uHigh: readonly Term[];
  readonly vLow: readonly Term[];
  readonly vHigh: readonly Term[];
  readonly wLow: readonly Term[];
  readonly wHigh: readonly Term[];
}

/** The tool's half width, which widens a box. */
export const widened = { D: rises(tools.largestCutter) };
export const widenedDown = { D: falls(tools.largestCutter) };

/** How far out the tool goes beside the rotary axis, whatever the side. */
export const outward = (name: string): Term =>
  term(name, { ...radiusRises, ...widened }, (of) => sweptRadius(of) + of.D / 2);

/** Both ends along the tilt axis for work that turns about the rotary axis. */
export const alongTiltAxis = (name: string): Pick<BoxTerms, 'uLow' | 'uHigh'> => ({
  uLow: [negated(outward(name))],
  uHigh: [outward(name)],
});
