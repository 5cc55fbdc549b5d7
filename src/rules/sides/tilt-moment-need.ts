import { worstGravityMoment } from '../../mechanics/forces/gravity-moment.ts';
import { caseInput } from '../inputs/input.ts';
import { part } from '../inputs/part.ts';
import { rotary } from '../inputs/rotary.ts';
import { evaluateSide, greatest } from '../judging/side.ts';
import { ends, rises, type Term, term, turnsAt } from '../judging/term.ts';
import { derived } from '../judging/value.ts';

interface Masses {
  readonly m: number;
  readonly fixture: number;
  readonly p: number;
  readonly f: number;
  readonly h: number;
  readonly e: number;
  readonly tilt: number;
}

/** Σ m·z about the tilt axis at tilt 0: the part above its fixture, the fixture above the faceplate. */
const massMoment = ({ m, fixture, p, f, h }: Masses): number => m * (p + f + h / 2) + fixture * (p + f / 2);

/**
 * Masses of the part at which the moment may turn round. It is convex in the mass, because eccentricity always
 * pulls the more, while below the axis the height pulls the less: so its least value lies inside. A = a + b·m
 * and E = e·m; the least of √(A² + E²), where A is nothing, and where the greatest tilt begins to bind.
 */
function massTurns({ fixture, p, f, h, e, tilt }: Masses, sign: 1 | -1): readonly number[] {
  const a = sign * fixture * (p + f / 2);
  const b = sign * (p + f + h / 2);
  const slope = e * Math.tan((Math.min(tilt, 90) * Math.PI) / 180);
  return [(-a * b) / (b * b + e * e), -a / b, a / (slope - b)].filter(Number.isFinite);
}

/**
 * The center of mass may lie above the tilt axis or, in a sunk cradle, below it: one term for each. A mass
 * pulls one way or the other depending on where it sits, so its extremes are its ends.
 */
const moment = (name: string, sign: 1 | -1): Term =>
  term(
    name,
    {
      m: turnsAt(part.mass, (of) => massTurns(of as unknown as Masses, sign)),
      fixture: ends(part.fixtureMass),
      p: ends(rotary.faceOffset),
      f: ends(part.fixtureHeight),
      h: ends(part.height),
      e: rises(part.eccentricity),
      tilt: rises(part.tilt),
    },
    (of) =>
      worstGravityMoment({
        massMoment: Math.max(0, sign * massMoment(of)),
        eccentricMassMoment: of.m * of.e,
        tilt: of.tilt,
      }),
  );

/** Greatest gravity moment about a level tilt axis over every tilt up to the part's own. */
export const gravityAboutTilt = greatest(['part', 'rotary'], () => [
  moment('center of mass above the tilt axis', 1),
  moment('center of mass below the tilt axis', -1),
]);

/** As an input of other terms. */
export const gravityAboutTiltInput = caseInput('gravity about the tilt axis', 'N·m', [0, 5000], (of) => {
  const value = evaluateSide(gravityAboutTilt, of);
  return derived(value, 'gravity moment', [value]);
});
