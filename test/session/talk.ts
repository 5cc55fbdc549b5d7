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

/** Everything is asked, in the fixed order. */
export const begun = (): Talk => ({ session: newSession(WORLD, [], null, 'all'), effects: [] });

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

/** What a roomy shop says, by the id of the question; in units of its own, so that it says the same in inches. */
const SHOP_ANSWERS: Readonly<Record<string, string>> = {
  'shortest-tool': '90 mm',
  'longest-tool': '180 mm',
  'largest-cutter': '20 mm',
  bay: '9 x 7 m',
  ceiling: '5 m',
  'doorway-width': '4 m',
  'doorway-height': '4 m',
  'floor-rating': '40 kPa',
  phases: 'three',
  volts: '400 V',
  kva: '120 kVA',
  'air-flow': '1000 L/min',
  'air-pressure': '8 bar',
  'lifting-means': 'hoist',
  'hoist-capacity': '3 t',
  'hook-height': '4 m',
  'sling-legs': '2',
  'sling-angle': '60',
  'sling-height': '500 mm',
  'lifting-gear': '10 kg',
  'door-sill': '1100 mm',
  'three-axis-share': '20 %',
  'vises-wanted': '2',
  'vise-height': '75 mm',
  'switches-per-week': '1',
  swap: 'keyed',
  loading: 'by hand',
  budget: '180000',
  'shop-rate': '70',
  years: '5',
  interest: '6 %',
  residual: '30000',
  'rigging-price': '4000',
  training: '3000',
  'yearly-costs': '2500',
  cam: 'three',
};

/**
 * Replies from where it stands to the review, whatever is asked on the way: what is said to a question by its id;
 * to others Enter where there is a usual answer, else 'not sure'.
 */
function repliesToReview(from: Talk, said: Readonly<Record<string, string>>): readonly string[] {
  const replies: string[] = [];
  for (let talk = from; asked(talk) !== 'review'; talk = go(talk, replies.at(-1) ?? '')) {
    const now = screen(talk);
    const usual = now.kind !== 'question' || now.current?.from === 'usual' ? '' : 'not sure';
    replies.push(said[asked(talk)] ?? usual);
    if (replies.length > 500) throw new Error(`the interview goes round in circles at ${asked(talk)}`);
  }
  return replies;
}

/** From the list of parts to the review. */
export const SHOP_REPLIES: readonly string[] = repliesToReview(
  go(begun(), 'mm', 'none', ...blockReplies('Lock gate hinge')),
  { ...SHOP_ANSWERS, parts: 'go on' },
);

/** An interview about one part, up to the review. */
export const oneBlock = (): Talk =>
  go(begun(), 'mm', 'none', ...blockReplies('Lock gate hinge'), ...SHOP_REPLIES);
