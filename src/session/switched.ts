import { isAnswered } from './kept.ts';
import { arrive } from './move.ts';
import { nextPlace } from './next.ts';
import type { Asks, Session, Step } from './session.ts';
import type { World } from './world.ts';

const WORDS: Readonly<Record<Asks, string>> = {
  all: 'From now on every question is asked, in a fixed order.',
  needed:
    'From now on only what can still change the result is asked, first what is expected to narrow the field most.',
};

/** Asks in this way from now on, or (null) in the other one; it stays where it is. */
export function switched(session: Session, asks: Asks | null, world: World): Step {
  const now = asks ?? (session.asks === 'all' ? 'needed' : 'all');
  const { kept, at } = session;
  const isKept = at.at !== 'resume' && isAnswered(kept);
  const said: Session = { ...session, asks: now, note: { kind: 'said', words: WORDS[now] } };
  const next = at.at === 'next' ? arrive(said, nextPlace(said, world)) : said;
  return [next, isKept ? [{ kind: 'save' }] : []];
}
