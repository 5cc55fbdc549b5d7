import type { Part, Uncertain } from '../../questions/answers.ts';
import { usually } from './usually.ts';

/**
 * A part with what is not known of it where it usually lies, by how large it is: holes and pockets are less deep than the
 * part, a fixture is about as wide as it or half as wide again, most work is positional, most parts stand upright on a
 * fixture and in its center, without a large hole beside it. Common practice, no source.
 */
export function likelyPart(part: Part): Part {
  const { wide, high } = extentOf(part);
  const { holding, contour } = part;
  return {
    ...part,
    motion: part.motion === 'unknown' ? 'positional' : part.motion,
    stands: part.stands === 'unknown' ? 'upright' : part.stands,
    depthTop: usually(part.depthTop, { low: 2, high: 0.6 * high }),
    depthSide: usually(part.depthSide, { low: 2, high: 0.4 * wide }),
    lowestSideFeature: usually(part.lowestSideFeature, { low: 0, high: 0.5 * high }),
    tolerance: usually(part.tolerance, { low: 0.03, high: 0.2 }),
    eccentricity: usually(part.eccentricity, { low: 0, high: 0 }),
    drill: part.drill?.diameter === 'unknown' ? null : part.drill,
    holding: {
      by: holding.by === 'unknown' ? 'fixture' : holding.by,
      diameter: usually(holding.diameter, {
        low: Math.max(60, 0.8 * wide),
        high: Math.max(160, 1.6 * wide),
      }),
      height: usually(holding.height, { low: 30, high: 100 }),
      mass: usually(holding.mass, wide > LARGE ? { low: 10, high: 60 } : { low: 2, high: 15 }),
    },
    contour: {
      feed: usually(contour.feed, { low: 500, high: 5000 }),
      radius: usually(contour.radius, { low: 0.1 * wide, high: 0.5 * wide }),
      chordError: usually(contour.chordError, { low: 0.005, high: 0.02 }),
    },
  };
}

/** A part that is wider than this has a heavy fixture, mm. */
const LARGE = 150;
/** Of a part whose size nobody knows, mm. */
const ORDINARY = 60;

function extentOf({ shape, size, diameter, length }: Part): { readonly wide: number; readonly high: number } {
  const most = (answer: Uncertain): number =>
    answer === 'unknown' ? ORDINARY : typeof answer === 'number' ? answer : answer[1];
  return shape === 'round'
    ? { wide: most(diameter), high: most(length) }
    : { wide: Math.max(most(size[0]), most(size[1])), high: most(size[2]) };
}
