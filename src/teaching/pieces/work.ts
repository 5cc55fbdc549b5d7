import { part } from '../../rules/inputs/part.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import type { Case } from '../../rules/judging/case.ts';
import { step } from '../formula/formula-source.ts';
import { called, type Piece } from './piece.ts';

/** The circle around the part, from its sizes. */
export const planRadius = (of: Case): Piece =>
  of.part?.shape === 'round'
    ? {
        given: { a: called('diameter of the part', part.length) },
        steps: [step('r', 'mm', 'radius of the part', 'a/2')],
      }
    : {
        given: {
          a: called('length of the part as it stands', part.length),
          b: called('width of the part as it stands', part.width),
        },
        steps: [step('r', 'mm', 'from the axis of the part to its corner', 'sqrt(a^2 + b^2)/2')],
      };

/** The circle that the part sweeps about the rotary axis. */
export const sweptRadius = (of: Case): Piece => {
  const { given, steps } = planRadius(of);
  return {
    given: { ...given, e: called('how far the part stands off the rotary axis', part.eccentricity) },
    steps: [...steps, step('R', 'mm', 'radius that the part sweeps about the rotary axis', 'r + e')],
  };
};

/** Faceplate, fixture and part, one on the other, above the tilt axis. */
export const STACK: Piece = {
  given: {
    p: rotary.faceOffset,
    f: called('height of the fixture', part.fixtureHeight),
    h: called('height of the part', part.height),
  },
  steps: [
    step('B', 'mm', 'bottom of the part above the tilt axis', 'p + f'),
    step('T', 'mm', 'top of the part above the tilt axis', 'B + h'),
  ],
};

const FIXTURE: Piece = {
  given: { F: called('diameter of the fixture', part.fixtureDiameter) },
  steps: [],
};
const FACEPLATE: Piece = { given: { P: rotary.faceplate }, steps: [] };

/** A corner of the work: how far beside the rotary axis, how high above the tilt axis. */
interface Corner {
  readonly v: string;
  readonly w: string;
}

export interface Outline {
  readonly pieces: readonly Piece[];
  readonly corners: readonly Corner[];
}

/** The corners of part and fixture. */
export const workOutline = (of: Case): Outline => ({
  pieces: [sweptRadius(of), STACK, FIXTURE],
  corners: [
    { v: 'R', w: 'T' },
    { v: 'R', w: 'B' },
    { v: 'F/2', w: 'B' },
    { v: 'F/2', w: 'p' },
  ],
});

/** The same with the edge of the faceplate. */
export function wholeOutline(of: Case): Outline {
  const { pieces, corners } = workOutline(of);
  if (!of.rotary.hasFaceplate) return { pieces, corners };
  return { pieces: [...pieces, FACEPLATE], corners: [...corners, { v: 'P/2', w: 'p' }] };
}

/** What turns about the rotary axis: radii of part, fixture and faceplate. */
export function turning(of: Case): { readonly pieces: readonly Piece[]; readonly radii: readonly string[] } {
  const all = [sweptRadius(of), FIXTURE];
  if (!of.rotary.hasFaceplate) return { pieces: all, radii: ['R', 'F/2'] };
  return { pieces: [...all, FACEPLATE], radii: ['R', 'F/2', 'P/2'] };
}
