import { parentPort, workerData } from 'node:worker_threads';
import type { Catalog } from '../../catalog/catalog.ts';
import { askingOf } from '../../rules/asking/asking.ts';
import { decide } from '../../rules/decide.ts';
import type { Job, JobDone } from './judge.ts';

/** Decides on a thread of its own, one job after the other. The catalog comes once, with the start. */
parentPort?.on('message', ({ id, answers, options }: Job) => {
  let done: JobDone;
  try {
    if (options === null) {
      done = { id, asking: askingOf(answers, workerData as Catalog) };
    } else {
      const decision = decide(answers, workerData as Catalog, options);
      const { answers: _answers, catalog: _catalog, ...inputs } = decision.inputs;
      done = { id, decision: { ...decision, inputs } };
    }
  } catch (error) {
    done = { id, fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(done);
});
