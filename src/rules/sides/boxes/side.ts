import { part } from '../../inputs/part.ts';
import { falls, negated, rises, term } from '../../judging/term.ts';
import { bottom, bottomRises, type Face, top, topRises } from '../stack.ts';
import { type BoxTerms, widened } from './box-terms.ts';

/** Onto one pair of side faces, at tilt 90. */
export function sideBoxTerms(face: Face): BoxTerms {
  const { name } = face;
  const uHigh = term(
    name,
    { s: rises(face.along), e: rises(part.eccentricity), ...widened },
    (of) => of.s / 2 + of.e + of.D / 2,
  );
  return {
    name,
    uLow: [negated(uHigh)],
    uHigh: [uHigh],
    vLow: [negated(term(name, { ...topRises, ...widened }, (of) => top(of) + of.D / 2))],
    vHigh: [negated(term(name, bottomRises, bottom))],
    wLow: [
      term(
        name,
        {
          d: rises(face.across),
          e: falls(part.eccentricity),
          depth: falls(part.depthSide),
        },
        (of) => of.d / 2 - of.e - of.depth,
      ),
    ],
    wHigh: [term(name, { d: rises(face.across), e: rises(part.eccentricity) }, (of) => of.d / 2 + of.e)],
  };
}
