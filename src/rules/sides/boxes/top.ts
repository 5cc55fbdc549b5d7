import { part } from '../../inputs/part.ts';
import { falls, negated, term } from '../../judging/term.ts';
import { top, topRises } from '../stack.ts';
import { alongTiltAxis, type BoxTerms, outward } from './box-terms.ts';

/** From above, at tilt 0. */
export function topBoxTerms(): BoxTerms {
  const name = 'top';
  return {
    name,
    ...alongTiltAxis(name),
    vLow: [negated(outward(name))],
    vHigh: [outward(name)],
    wLow: [term(name, { ...topRises, depth: falls(part.depthTop) }, (of) => top(of) - of.depth)],
    wHigh: [term(name, topRises, top)],
  };
}
