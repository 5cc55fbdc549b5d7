import { worstGravityMoment } from '../../mechanics/forces/gravity-moment.ts';
import { sideInput } from '../inputs/input.ts';
import { part } from '../inputs/part.ts';
import { rotary } from '../inputs/rotary.ts';
import { greatest } from '../judging/side.ts';
import { ends, rises, type Term, term, turnsAt } from '../judging/term.ts';

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
 * A lies along the tool at tilt 0 and E across it. Where gravity pulls across a level tool, not along it, the two change
 * places: the weight pulls with the whole height at tilt 0, with the eccentricity at 90°.
 */
const tangent = (tilt: number, across: boolean): number => {
  const slope = Math.tan((Math.min(tilt, 90) * Math.PI) / 180);
  return across ? 1 / slope : slope;
};

/**
 * Masses of the part at which the moment may turn round. It is convex in the mass, because eccentricity always
 * pulls the more, while below the axis the height pulls the less: so its least value lies inside. A = a + b·m
 * and E = e·m; the least of √(A² + E²), where A is nothing, and where the greatest tilt begins to bind.
 */
function massTurns({ fixture, p, f, h, e, tilt }: Masses, sign: 1 | -1, across: boolean): readonly number[] {
  const a = sign * fixture * (p + f / 2);
  const b = sign * (p + f + h / 2);
  const slope = e * tangent(tilt, across);
  return [(-a * b) / (b * b + e * e), -a / b, a / (slope - b)].filter(Number.isFinite);
}

/**
 * The center of mass may lie above the tilt axis or, in a sunk cradle, below it: one term for each. A mass
 * pulls one way or the other depending on where it sits, so its extremes are its ends.
 */
const moment = (name: string, sign: 1 | -1, across: boolean): Term =>
  term(
    name,
    {
      m: turnsAt(part.mass, (of) => massTurns(of as unknown as Masses, sign, across)),
      fixture: ends(part.fixtureMass),
      p: ends(rotary.faceOffset),
      f: ends(part.fixtureHeight),
      h: ends(part.height),
      e: rises(part.eccentricity),
      tilt: rises(part.tilt),
    },
    (of) => {
      const along = Math.max(0, sign * massMoment(of));
      const off = of.m * of.e;
      return worstGravityMoment({
        massMoment: across ? off : along,
        eccentricMassMoment: across ? along : off,
        tilt: of.tilt,
      });
    },
  );

const ABOVE = 'center of mass above the tilt axis';
const BELOW = 'center of mass below the tilt axis';
const FRONT = 'center of mass before the tilt axis';
const BEHIND = 'center of mass behind the tilt axis';
const UPRIGHT = term('gravity along an upright tilt axis', {}, () => 0);

/**
 * Greatest gravity moment about the tilt axis over every tilt up to the part's own. About an upright tilt axis there is
 * none.
 */
export const gravityAboutTilt = greatest(['part', 'rotary'], ({ rotary: { gravity } }) => {
  if (gravity === 'along') return [UPRIGHT];
  if (gravity === 'across') return [moment(FRONT, 1, true), moment(BEHIND, -1, true)];
  return [moment(ABOVE, 1, false), moment(BELOW, -1, false)];
});

export const gravityAboutTiltInput = sideInput(
  'gravity about the tilt axis',
  'N·m',
  [0, 5000],
  'gravity moment',
  () => gravityAboutTilt,
);
