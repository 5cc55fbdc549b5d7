import { setFlagsFromString } from 'node:v8';
import { Worker } from 'node:worker_threads';
import type { Catalog } from '../../catalog/catalog.ts';
import { createJudge, type Judge } from './judge.ts';

export interface WorkerJudge extends Judge {
  readonly close: () => void;
}

/** A judge that decides on a thread of its own. The bundle puts that thread's program beside this one. */
export function workerJudge(catalog: Catalog, onReady: () => void): WorkerJudge {
  // a decision leaves much behind; without this both threads let it pile up to twice the size
  setFlagsFromString('--optimize-for-size');
  const worker = new Worker(new URL('./decide-worker.js', import.meta.url), { workerData: catalog });
  const { judge, received } = createJudge((job) => worker.postMessage(job), onReady);
  worker.on('message', received);
  worker.on('error', (error) => {
    throw error;
  });
  return { ...judge, close: () => void worker.terminate() };
}
