import { liveOf } from '../../src/session/live.ts';
import { type Screen, screenOf } from '../../src/session/screen.ts';
import type { Effect, Event, Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { FAKE_CATALOG, fakeDecide } from './fake-engine.ts';

/** A conversation without a shell: what was said, where it stands, what it asked to be done. */
export interface Talk {
  readonly session: Session;
  readonly effects: readonly Effect[];
}

export const WORLD: World = createWorld(FAKE_CATALOG, fakeDecide);

export const begun = (): Talk => ({ session: newSession(WORLD, [], null), effects: [] });

/** Replies, or events, one after the other; '' is Enter with nothing typed. */
export function go(talk: Talk, ...turns: readonly (string | Event)[]): Talk {
  return turns.reduce<Talk>(({ session, effects }, turn) => {
    const event: Event =
      typeof turn !== 'string' ? turn : turn === '' ? { type: 'accept' } : { type: 'reply', text: turn };
    const [next, done] = step(session, event, WORLD);
    return { session: next, effects: [...effects, ...done] };
  }, talk);
}

export const screen = ({ session }: Talk): Screen => screenOf(session, WORLD);

export const live = ({ session }: Talk) => liveOf(session, WORLD);

/** The question that is asked now; its kind of screen where none is. */
export function asked(talk: Talk): string {
  const now = screen(talk);
  return now.kind === 'question' ? now.id : now.kind;
}

export const answers = ({ session }: Talk) => WORLD.survey(session.kept).answers;

/** Replies that describe one block, from its name to its last question. */
export const blockReplies = (name: string): readonly string[] => [
  name,
  'block',
  '90 x 60 x 55',
  'wrought aluminum',
  '',
  'top, sides',
  'no',
  'positional',
  '30',
  '20',
  '0',
  '0.05',
  'no',
  'fixture',
  '100',
  '40',
  '4',
  '',
  'heavy',
  '',
  '400',
  '12',
  '4',
  '35',
  '18',
  '3',
];

/** From the list of parts to the review. */
export const SHOP_REPLIES: readonly string[] = ['go on', '90', '180', '20', 'by hand', '2', '180000', ''];

/** An interview about one part, up to the review. */
export const oneBlock = (): Talk =>
  go(begun(), 'mm', 'none', ...blockReplies('Lock gate hinge'), ...SHOP_REPLIES);
