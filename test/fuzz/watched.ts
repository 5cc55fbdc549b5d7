import { once } from 'node:events';
import { Worker } from 'node:worker_threads';

/** Two numbers that both threads see: how many cases were begun, and which one runs. */
const [BEGUN, RUNS] = [0, 1];

const WATCHER = `
const { workerData: { beats, name, seconds } } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const seen = new Int32Array(beats);
let [begun, from] = [-1, process.cpuUsage()];
setInterval(() => {
  const now = Atomics.load(seen, ${BEGUN});
  if (now !== begun) [begun, from] = [now, process.cpuUsage()];
  const { user, system } = process.cpuUsage(from);
  if ((user + system) / 1e6 < seconds) return;
  writeSync(2, name + ', case ' + Atomics.load(seen, ${RUNS}) + ': it has not returned after ' + seconds + ' s of work\\n');
  process.kill(process.pid, 'SIGKILL');
}, 100);
`;

export interface Watched {
  /** A case is about to run. */
  readonly begin: (number: number) => void;
  readonly end: () => Promise<unknown>;
}

/**
 * A thread beside the cases that ends the process, with a word, when one works for longer than `seconds`: what never returns
 * holds up every limit of its own thread.
 */
export async function watched(name: string, seconds: number): Promise<Watched> {
  const beats = new SharedArrayBuffer(8);
  const told = new Int32Array(beats);
  const worker = new Worker(WATCHER, { eval: true, execArgv: [], workerData: { beats, name, seconds } });
  // it begins to run only while this thread is free
  await once(worker, 'online');
  worker.unref();
  return {
    begin: (number) => {
      Atomics.store(told, RUNS, number);
      Atomics.add(told, BEGUN, 1);
    },
    end: () => worker.terminate(),
  };
}
