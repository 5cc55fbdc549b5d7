import { parentPort, workerData } from 'node:worker_threads';
import type { Catalog } from '../../catalog/catalog.ts';
import { decide } from '../../rules/decide.ts';
import type { Job, JobDone } from './judge.ts';

/** Decides on a thread of its own, one job after the other. The catalog comes once, with the start. */
parentPort?.on('message', ({ id, answers, options }: Job) => {
  let done: JobDone;
  try {
    done = { id, decision: decide(answers, workerData as Catalog, options) };
  } catch (error) {
    done = { id, fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(done);
});
