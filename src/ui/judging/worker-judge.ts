import { Worker } from 'node:worker_threads';
import type { Catalog } from '../../catalog/catalog.ts';
import { createJudge, type Judge } from './judge.ts';

export interface WorkerJudge extends Judge {
  readonly close: () => void;
}

/** What a decision leaves behind is collected before it piles up, at next to no cost in time. */
const YOUNG_MB = 4;

/** A judge that decides on a thread of its own. The bundle puts that thread's program beside this one. */
export function workerJudge(catalog: Catalog, onReady: () => void): WorkerJudge {
  const worker = new Worker(new URL('./decide-worker.js', import.meta.url), {
    workerData: catalog,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
  });
  const { judge, received } = createJudge((job) => worker.postMessage(job), onReady);
  worker.on('message', received);
  worker.on('error', (error) => {
    throw error;
  });
  return { ...judge, close: () => void worker.terminate() };
}
