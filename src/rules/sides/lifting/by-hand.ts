import type { Coupling } from '../../../mechanics/lifting/coupling-multiplier.ts';
import { recommendedWeightLimit } from '../../../mechanics/lifting/recommended-weight-limit.ts';
import { teamLiftLimit } from '../../../mechanics/lifting/team-lift-limit.ts';
import { meansInput } from '../../inputs/means.ts';
import { falls, rises, type Term, term, turnsAt } from '../../judging/term.ts';

/** mm, and who lifts. */
interface HandLift {
  readonly reach: number;
  readonly from: number;
  readonly lift: number;
  readonly people: number;
}

/**
 * What hands may lift, kg: the lower of the limits where the lift begins and where it ends, because a rotary is
 * set down with care. Lifted rarely, standing straight before it.
 */
function limitByHand({ reach, from, lift, people }: HandLift, coupling: Coupling): number {
  const [horizontal, origin, travel] = [reach / 10, from / 10, lift / 10];
  const at = (vertical: number): number =>
    recommendedWeightLimit({
      ...{ horizontal, vertical, origin, travel, coupling },
      ...{ asymmetry: 0, frequency: 0.2, duration: 'short' },
    });
  return teamLiftLimit(Math.min(at(origin), at(origin + travel)), people);
}

/**
 * Heights of the first grip at which the limit may turn round: where the hands begin or end at the height of the
 * knuckles, and where both ends are as good as each other.
 */
function turns(lift: number, coupling: Coupling): readonly number[] {
  const asGood = coupling === 'fair' ? (4887.5 - 3 * lift) / 5.85 : 750 - lift / 2;
  return [750, 750 - lift, asGood];
}

/** What people lift with their hands. */
export const byHand = (index: number, coupling: Coupling): Term =>
  term(
    'by hand',
    {
      reach: falls(meansInput(index, 'hand', 'reach', 'mm', [0, 900])),
      from: turnsAt(meansInput(index, 'hand', 'from', 'mm', [0, 1700]), (of) =>
        turns(of.lift ?? 0, coupling),
      ),
      lift: falls(meansInput(index, 'hand', 'lift', 'mm', [0, 1500])),
      people: rises(meansInput(index, 'hand', 'people', '', [1, 5])),
    },
    (of) => limitByHand(of, coupling),
  );
