import { parentPort, workerData } from 'node:worker_threads';
import type { Catalog } from '../../catalog/catalog.ts';
import { askingOf } from '../../rules/asking/asking.ts';
import { decide } from '../../rules/decide.ts';
import type { Job, JobDone } from './judge.ts';

/** Decides on a thread of its own, one job after the other. The catalog comes once, with the start. */
parentPort?.on('message', (job: Job) => {
  const { id, answers } = job;
  const catalog = workerData as Catalog;
  let done: JobDone;
  try {
    if ('unasked' in job) {
      done = { id, asking: askingOf(answers, catalog, job.unasked) };
    } else {
      const decision = decide(answers, catalog, job.options);
      const { answers: _answers, catalog: _catalog, ...inputs } = decision.inputs;
      done = { id, decision: { ...decision, inputs } };
    }
  } catch (error) {
    done = { id, fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(done);
});
