import {
  greatestHeight,
  greatestReach,
  leastHeight,
  leastReach,
} from '../../../mechanics/geometry/swept-extremes.ts';
import { part } from '../../inputs/part.ts';
import { falls, rises, type Term, term } from '../../judging/term.ts';
import {
  bottom,
  bottomFalls,
  bottomRises,
  radiusFalls,
  radiusRises,
  sweptRadius,
  top,
  topFalls,
  topRises,
} from '../stack.ts';
import { alongTiltAxis, type BoxTerms, widened, widenedDown } from './box-terms.ts';

const NAME = 'simultaneous';
const BEYOND = 'simultaneous, beyond level';
/** A greater tilt sweeps more. */
const wider = { tilt: rises(part.tilt) };
const narrower = { tilt: falls(part.tilt) };
/** The wall that the tool sees begins in the middle of the part, which may stand off the axis. */
const nearWall = { e: falls(part.eccentricity) };
const upToLevel = (tilt: number): number => Math.min(tilt, 90);

/** Every tilt from 0 to the greatest: the top disc is seen up to 90°, the near wall throughout. */
export const simultaneousBoxTerms = (): BoxTerms => ({
  name: NAME,
  ...alongTiltAxis(NAME),
  vLow: reachLow(),
  vHigh: reachHigh(),
  wLow: heightLow(),
  wHigh: heightHigh(),
});

const reachLow = (): readonly Term[] => [
  term(
    NAME,
    { ...radiusFalls, ...topFalls, ...widenedDown, ...narrower },
    (of) => leastReach(-sweptRadius(of), top(of), 0, upToLevel(of.tilt)) - of.D / 2,
  ),
  term(BEYOND, { ...radiusFalls, ...topFalls, ...widenedDown, ...narrower }, (of) =>
    of.tilt > 90 ? leastReach(sweptRadius(of), top(of), 90, of.tilt) - of.D / 2 : Number.POSITIVE_INFINITY,
  ),
];

const reachHigh = (): readonly Term[] => [
  term(
    NAME,
    { ...radiusRises, ...bottomFalls, ...widened, ...wider },
    (of) => greatestReach(sweptRadius(of), bottom(of), 0, upToLevel(of.tilt)) + of.D / 2,
  ),
  term(BEYOND, { ...bottomFalls, ...widened, ...wider, e: rises(part.eccentricity) }, (of) =>
    of.tilt > 90 ? greatestReach(-of.e, bottom(of), 90, of.tilt) + of.D / 2 : Number.NEGATIVE_INFINITY,
  ),
];

const heightLow = (): readonly Term[] => [
  term('simultaneous, far edge of the top', { ...radiusFalls, ...topRises, ...narrower }, (of) =>
    leastHeight(-sweptRadius(of), top(of), 0, upToLevel(of.tilt)),
  ),
  term('simultaneous, foot of the wall', { ...bottomRises, ...nearWall, ...narrower }, (of) =>
    leastHeight(-of.e, bottom(of), 0, upToLevel(of.tilt)),
  ),
  term(BEYOND, { ...topFalls, ...nearWall, ...narrower }, (of) =>
    of.tilt > 90 ? leastHeight(-of.e, top(of), 90, of.tilt) : Number.POSITIVE_INFINITY,
  ),
];

const heightHigh = (): readonly Term[] => [
  term(NAME, { ...radiusRises, ...topRises, ...wider }, (of) =>
    greatestHeight(sweptRadius(of), top(of), 0, upToLevel(of.tilt)),
  ),
  term(BEYOND, { ...radiusRises, ...bottomFalls, ...wider }, (of) =>
    of.tilt > 90 ? greatestHeight(sweptRadius(of), bottom(of), 90, of.tilt) : Number.NEGATIVE_INFINITY,
  ),
];
