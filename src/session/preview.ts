import { type Live, liveOf } from './live.ts';
import { feedbackIn } from './screen.ts';
import type { Event, Session } from './session.ts';
import { step } from './step.ts';
import type { World } from './world.ts';

/** What an answer would be taken as, before it is given; `takes`: the same as a sentence. */
export type Preview =
  | { readonly ok: true; readonly words: string; readonly takes: string; readonly after: Session }
  /** one sentence on what is accepted */
  | { readonly ok: false; readonly why: string };

/** Example: '3 1/2 in' typed at a length → '88.9 mm (3.5 in)'. */
export function previewOf(session: Session, event: Event, world: World): Preview {
  // which question it would lead to is not worked out for a look ahead
  const [after] = step(session, event, { ...world, asking: () => 'later' });
  // an answer may lead back to the result, which is not to be decided for a look ahead
  const { accepted, error, said } = feedbackIn(after, world);
  if (error !== null) return { ok: false, why: error.why };
  // what changes nothing of what is tried is no answer that is taken
  const takes = accepted === null ? (said ?? '') : `Enter takes: ${accepted.words}`;
  return { ok: true, words: accepted?.words ?? '', takes, after };
}

/** What it would do to the field of arrangements; null where nothing is judged yet, or nothing would change. May take deciding. */
export const previewLive = (preview: Preview, world: World): Live | null =>
  preview.ok ? liveOf(preview.after, world) : null;
