import { heightAt, reachAt } from '../../../mechanics/geometry/rotate.ts';
import { part } from '../../inputs/part.ts';
import { falls, type Input, term, turnsAt } from '../../judging/term.ts';
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
import { heightTurns, reachTurns } from './turning-points.ts';

type Values = Readonly<Record<'p' | 'f' | 'h' | 'r' | 'e', number>>;

const nearWall = { e: falls(part.eccentricity) };

/** From less than 90° to the axis: the top disc and the half of the wall that faces the tool. */
export function slantBoxTerms(angle: Input): BoxTerms {
  const name = 'slant';
  const turns = (points: (of: Values) => readonly number[]) => ({
    tilt: turnsAt(angle, (others) => points(others as Values)),
  });
  return {
    name,
    ...alongTiltAxis(name),
    vLow: [
      term(
        name,
        {
          ...radiusFalls,
          ...topFalls,
          ...widenedDown,
          ...turns((of) => reachTurns(-sweptRadius(of), top(of))),
        },
        (of) => reachAt(-sweptRadius(of), top(of), of.tilt) - of.D / 2,
      ),
    ],
    vHigh: [
      term(
        name,
        {
          ...radiusRises,
          ...bottomFalls,
          ...widened,
          ...turns((of) => reachTurns(sweptRadius(of), bottom(of))),
        },
        (of) => reachAt(sweptRadius(of), bottom(of), of.tilt) + of.D / 2,
      ),
    ],
    wLow: [
      term(
        'slant, far edge of the top',
        {
          ...radiusFalls,
          ...topRises,
          ...turns((of) => heightTurns(-sweptRadius(of), top(of))),
        },
        (of) => heightAt(-sweptRadius(of), top(of), of.tilt),
      ),
      term(
        'slant, foot of the wall',
        { ...bottomRises, ...nearWall, ...turns((of) => heightTurns(-of.e, bottom(of))) },
        (of) => heightAt(-of.e, bottom(of), of.tilt),
      ),
    ],
    wHigh: [
      term(
        name,
        {
          ...radiusRises,
          ...topRises,
          ...turns((of) => heightTurns(sweptRadius(of), top(of))),
        },
        (of) => heightAt(sweptRadius(of), top(of), of.tilt),
      ),
    ],
  };
}
