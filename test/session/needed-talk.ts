import type { Event, Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { type Ask, createWorld, type World } from '../../src/session/world.ts';
import { fakeAsk } from './fake-asking.ts';
import { FAKE_CATALOG, fakeDecide } from './fake-engine.ts';

export const worldWith = (ask: Ask): World => createWorld(FAKE_CATALOG, fakeDecide, ask);
export const WORLD = worldWith(fakeAsk);

export const go = (start: Session, world: World, ...turns: readonly (string | Event)[]): Session =>
  turns.reduce<Session>((session, turn) => {
    const event: Event =
      typeof turn !== 'string' ? turn : turn === '' ? { type: 'accept' } : { type: 'reply', text: turn };
    return step(session, event, world)[0];
  }, start);

export const begun = (world = WORLD): Session => newSession(world, [], null);

export const PART = ['Hinge', 'block', '90 x 60 x 55', 'top, sides'];
export const BASICS = ['mm', 'none', ...PART, 'go on', '3600', '2 m', '2.4 m'];
