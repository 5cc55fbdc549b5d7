import type { Answers } from '../../questions/answers.ts';
import type { Decision } from '../../rules/decision.ts';
import type { Decide } from '../../session/world.ts';
import { NotYet } from '../state/not-yet.ts';

type DecideOptions = Parameters<Decide>[2];

/** What is asked of whoever decides. */
export interface Job {
  readonly id: number;
  readonly answers: Answers;
  readonly options: DecideOptions;
}

export type JobDone =
  | { readonly id: number; readonly decision: Decision }
  | { readonly id: number; readonly fault: string };

/** Decides beside the screen, so that no key ever waits for it. */
export interface Judge {
  /** Gives a decision that is there; throws `NotYet` where it is not, and remembers that it is wanted. */
  readonly decide: Decide;
  /** Forgets what was wanted and is not begun: only what the screen asks for now counts. */
  readonly forget: () => void;
  /** Begins what is wanted most, if nothing is being worked out. */
  readonly work: () => void;
}

/** Decisions that are kept: the answers so far, what is looked ahead to, the result and its details. */
const MOST_KEPT = 12;

/** `send` hands a job over; what comes of it is given to `received`. */
export function createJudge(send: (job: Job) => void, onReady: () => void) {
  const kept = new Map<string, Decision>();
  const wanted = new Map<string, Omit<Job, 'id'>>();
  let busy: { readonly id: number; readonly key: string } | null = null;
  let lastId = 0;
  const keep = (key: string, decision: Decision): void => {
    kept.delete(key);
    kept.set(key, decision);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  };
  const judge: Judge = {
    decide: (answers, _catalog, options) => {
      const key = JSON.stringify([answers, options]);
      const found = kept.get(key);
      if (found !== undefined) {
        keep(key, found);
        return found;
      }
      wanted.set(key, { answers, options });
      throw new NotYet();
    },
    forget: () => wanted.clear(),
    work: () => {
      const [next] = wanted;
      if (busy !== null || next === undefined) return;
      const [key, job] = next;
      wanted.delete(key);
      lastId += 1;
      busy = { id: lastId, key };
      send({ id: lastId, ...job });
    },
  };
  const received = (answer: JobDone): void => {
    if (busy?.id !== answer.id) return;
    const { key } = busy;
    busy = null;
    if ('fault' in answer) throw new Error(answer.fault);
    keep(key, answer.decision);
    onReady();
  };
  return { judge, received };
}
