// The tests by chance at their full length: npm run long [-- SEED]. Many minutes; the short form is part of `npm test`.
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
  ],
  {
    stdio: 'inherit',
    env: {
      ...process.env,
      FIVESIDES_KEYS: '20000',
      FIVESIDES_KILLS: '50',
      ...(seed === undefined ? {} : { FIVESIDES_SEED: seed }),
    },
  },
);
process.exitCode = status ?? 1;
