import { Worker } from 'node:worker_threads';
import type { Catalog } from '../../catalog/catalog.ts';
import { isMarket } from '../../rules/fast/is-market.ts';
import { createJudge, type JobDone, type Judge } from './judge.ts';

export interface WorkerJudge extends Judge {
  readonly close: () => void;
}

/**
 * What a decision leaves behind is collected before it piles up, at next to no cost in time. Of a large catalog so much is
 * worked out at once that collecting it so often takes as long as deciding.
 */
const YOUNG_MB = 4;
const YOUNG_MB_OF_MARKET = 96;

/**
 * A judge that decides on a thread of its own. The bundle puts that thread's program beside this one. On a large catalog a
 * decision takes so long that a thread is ended, and another begun, rather than waited for; and what to ask next, which does
 * not take long, is worked out on another thread meanwhile.
 */
export function workerJudge(catalog: Catalog, onReady: () => void): WorkerJudge {
  const isLarge = isMarket(catalog);
  const deciding = threadedJudge(catalog, onReady, { begins: 'now', givesUp: isLarge });
  if (!isLarge) return deciding;
  const asking = threadedJudge(catalog, onReady, { begins: 'with its first job', givesUp: false });
  const onBoth = (act: 'forget' | 'work' | 'close') => (): void => {
    deciding[act]();
    asking[act]();
  };
  return {
    decide: deciding.decide,
    ask: asking.ask,
    forget: onBoth('forget'),
    work: onBoth('work'),
    close: onBoth('close'),
  };
}

function threadedJudge(
  catalog: Catalog,
  onReady: () => void,
  { begins, givesUp }: { readonly begins: 'now' | 'with its first job'; readonly givesUp: boolean },
): WorkerJudge {
  const begun = (): Worker => {
    const worker = new Worker(new URL('./decide-worker.js', import.meta.url), {
      workerData: catalog,
      resourceLimits: { maxYoungGenerationSizeMb: isMarket(catalog) ? YOUNG_MB_OF_MARKET : YOUNG_MB },
    });
    worker.on('message', (done: JobDone) => received(done));
    worker.on('error', (error) => {
      throw error;
    });
    return worker;
  };
  let worker = begins === 'now' ? begun() : null;
  const giveUp = (): void => {
    void worker?.terminate();
    worker = begun();
  };
  const { judge, received } = createJudge(
    (job) => {
      worker ??= begun();
      worker.postMessage(job);
    },
    onReady,
    givesUp ? giveUp : null,
  );
  return { ...judge, close: () => void worker?.terminate() };
}
