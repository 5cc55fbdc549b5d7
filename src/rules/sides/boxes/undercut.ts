import { heightAt, reachAt } from '../../../mechanics/geometry/rotate.ts';
import { part } from '../../inputs/part.ts';
import { falls, type Input, rises, term, turnsAt } from '../../judging/term.ts';
import { bottom, bottomFalls, radiusFalls, radiusRises, sweptRadius, top, topFalls } from '../stack.ts';
import { alongTiltAxis, type BoxTerms, widened, widenedDown } from './box-terms.ts';
import { heightTurns, reachTurns } from './turning-points.ts';

type Values = Readonly<Record<'p' | 'f' | 'h' | 'r' | 'e', number>>;

/** From more than 90° to the axis: the half of the wall that faces the tool, and nothing of the top. */
export function undercutBoxTerms(angle: Input): BoxTerms {
  const name = 'undercut';
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
          ...turns((of) => reachTurns(sweptRadius(of), top(of))),
        },
        (of) => reachAt(sweptRadius(of), top(of), of.tilt) - of.D / 2,
      ),
    ],
    vHigh: [
      term(
        name,
        {
          ...bottomFalls,
          ...widened,
          e: rises(part.eccentricity),
          ...turns((of) => reachTurns(-of.e, bottom(of))),
        },
        (of) => reachAt(-of.e, bottom(of), of.tilt) + of.D / 2,
      ),
    ],
    wLow: [
      term(
        name,
        { ...topFalls, e: falls(part.eccentricity), ...turns((of) => heightTurns(-of.e, top(of))) },
        (of) => heightAt(-of.e, top(of), of.tilt),
      ),
    ],
    wHigh: [
      term(
        name,
        {
          ...radiusRises,
          ...bottomFalls,
          ...turns((of) => heightTurns(sweptRadius(of), bottom(of))),
        },
        (of) => heightAt(sweptRadius(of), bottom(of), of.tilt),
      ),
    ],
  };
}
