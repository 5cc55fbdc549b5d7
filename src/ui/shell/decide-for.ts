import type { Session } from '../../session/session.ts';
import { variantsBeside } from '../../session/trial-screens.ts';
import type { World } from '../../session/world.ts';
import type { Request } from '../state/ui.ts';

/** Decides what is to be written, so that the writing has not to wait; throws `NotYet` where that is not there. */
export function decideFor(requests: readonly Request[], session: Session, world: World): void {
  for (const request of requests) {
    if (request.kind !== 'effect' || request.effect.kind !== 'write') continue;
    const { what } = request.effect;
    if (what === 'answers') continue;
    if (what === 'variants') variantsBeside(session, world);
    else world.decision(session.kept);
    // only the whole of it says how far each answer may move
    if (what === 'report' || what === 'decision') world.decisionWithRanges(session.kept);
  }
}
