// The tests by chance at their full length: npm run long [-- SEED]. Hours; the short form is part of `npm test`.
// FIVESIDES_NODES: other versions of Node that the packed program is to run with, paths with colons between.
import { spawnSync } from 'node:child_process';

const [seed] = process.argv.slice(2);
const { status } = spawnSync(
  process.execPath,
  [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--maxWorkers=1',
    'test/terminal/random-keys.test.ts',
    'test/terminal/random-kills.test.ts',
    'test/fuzz/fuzz.test.ts',
    'test/package/tarball.test.ts',
  ],
  {
    stdio: 'inherit',
    env: {
      ...process.env,
      FIVESIDES_KEYS: '20000',
      FIVESIDES_KILLS: '50',
      FIVESIDES_CASES: process.env.FIVESIDES_CASES ?? '100000',
      // what takes more than a gigabyte ends the run
      NODE_OPTIONS: '--max-old-space-size=1024',
      ...(seed === undefined ? {} : { FIVESIDES_SEED: seed }),
    },
  },
);
process.exitCode = status ?? 1;
