// Exercises of every check and whole cases, each with its sheet read back and solved: npm run exercises [-- SEEDS].
// SEEDS of each at each level; without it eight, which makes more than a thousand. What was found sound before is left out,
// so that a run that was stopped goes on; `reports/exercises.jsonl` taken away begins anew.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';

const [seeds = '8'] = process.argv.slice(2);
const log = 'reports/exercises.jsonl';
mkdirSync('reports', { recursive: true });
const { status } = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', '--maxWorkers=1', 'test/teaching/exercises'],
  { stdio: 'inherit', env: { ...process.env, EXERCISES: seeds, EXERCISES_LOG: log } },
);
const found = new Map(
  readFileSync(log, 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line))
    .map((each) => [each.key, each.found]),
);
const counts = new Map();
for (const each of found.values())
  for (const [what, wrong] of Object.entries(each))
    if (wrong === '') counts.set(what, (counts.get(what) ?? 0) + 1);
console.log(`${found.size} exercises`);
for (const [what, count] of counts) console.log(`${what}: ${count}`);
process.exitCode = status ?? 1;
