import type { Answers } from '../../questions/answers.ts';
import type { Asking } from '../../rules/asking/asking.ts';
import type { Decision } from '../../rules/decision.ts';
import type { Ask, Decide } from '../../session/world.ts';
import { NotYet } from '../state/not-yet.ts';

type DecideOptions = Parameters<Decide>[2];

/** What is asked of whoever decides: a decision, or only which answers can still change the result. */
export type Job = { readonly id: number; readonly answers: Answers } & Task;

type Task =
  | { readonly options: DecideOptions }
  /** paths of what nobody was asked yet */
  | { readonly unasked: readonly string[] };

/** A decision on its way: both sides have what it was made from, which is not sent with each of them. */
export interface SentDecision extends Omit<Decision, 'inputs'> {
  readonly inputs: Omit<Decision['inputs'], 'answers' | 'catalog'>;
}

export type JobDone =
  | { readonly id: number; readonly decision: SentDecision }
  | { readonly id: number; readonly asking: Asking }
  | { readonly id: number; readonly fault: string };

/** Decides beside the screen, so that no key ever waits for it. */
export interface Judge {
  /** Gives a decision that is there; throws `NotYet` where it is not, and remembers that it is wanted. */
  readonly decide: Decide;
  /** Which answers can still change the result; 'later' where that is not there, and then it is remembered that it is wanted. */
  readonly ask: Ask;
  /** Forgets what was wanted and is not begun: only what the screen asks for now counts. */
  readonly forget: () => void;
  /** Begins what is wanted most, if nothing is being worked out. */
  readonly work: () => void;
}

/** Decisions that are kept: the answers so far, what is looked ahead to, the result and its details. */
const MOST_KEPT = 12;

/** What a decision is made from. */
type From = Pick<Decision['inputs'], 'answers' | 'catalog'>;

function keepIn<Kept>(kept: Map<string, Kept>, key: string, now: Kept): void {
  kept.delete(key);
  kept.set(key, now);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
}

/**
 * `send` hands a job over; what comes of it is given to `received`. `giveUp`: where a job takes long, one that nobody wants
 * any more makes way for one that is wanted.
 */
export function createJudge(
  send: (job: Job) => void,
  onReady: () => void,
  giveUp: (() => void) | null = null,
) {
  const kept = new Map<string, Decision>();
  const asked = new Map<string, Asking>();
  const wanted = new Map<string, From & { readonly task: Task }>();
  let busy: { readonly id: number; readonly key: string; readonly from: From } | null = null;
  let lastId = 0;
  const keep = (key: string, decision: Decision): void => keepIn(kept, key, decision);
  const judge: Judge = {
    decide: (answers, catalog, options) => {
      const key = JSON.stringify([answers, options]);
      const found = kept.get(key);
      if (found !== undefined) {
        keep(key, found);
        return found;
      }
      wanted.set(key, { answers, catalog, task: { options } });
      throw new NotYet();
    },
    ask: (answers, catalog, unasked) => {
      const key = JSON.stringify([answers, { unasked }]);
      const found = asked.get(key);
      if (found !== undefined) return found;
      wanted.set(key, { answers, catalog, task: { unasked } });
      return 'later';
    },
    forget: () => wanted.clear(),
    work: () => {
      if (busy !== null && giveUp !== null && wanted.size > 0 && !wanted.has(busy.key)) {
        giveUp();
        busy = null;
      }
      const [next] = wanted;
      if (busy !== null || next === undefined) return;
      const [key, { answers, catalog, task }] = next;
      wanted.delete(key);
      lastId += 1;
      busy = { id: lastId, key, from: { answers, catalog } };
      send({ id: lastId, answers, ...task });
    },
  };
  const received = (answer: JobDone): void => {
    if (busy?.id !== answer.id) return;
    const { key, from } = busy;
    busy = null;
    if ('fault' in answer) throw new Error(answer.fault);
    if ('asking' in answer) {
      keepIn(asked, key, answer.asking);
      onReady();
      return;
    }
    const { decision } = answer;
    // each key in its usual place: it is written to a file in this order
    keep(key, { ...decision, inputs: { ...from, ...decision.inputs } });
    onReady();
  };
  return { judge, received };
}
