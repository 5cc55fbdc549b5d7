import { spawnSync } from 'node:child_process';
import { buildSync } from 'esbuild';
import { expect, test } from 'vitest';
import { watched } from './watched.ts';

test('a case that never returns ends the run, and is named', () => {
  const { outputFiles } = buildSync({
    entryPoints: ['test/fuzz/never-returns.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    write: false,
  });
  const { signal, stderr } = spawnSync(
    process.execPath,
    ['--input-type=module', '-e', outputFiles[0]?.text ?? ''],
    { encoding: 'utf8', timeout: 200_000 },
  );
  expect(stderr).toContain('spoiled input, case 3: it has not returned after 1 s of work');
  expect(signal).toBe('SIGKILL');
});

test('many cases that each return are let be, however long they take together', async () => {
  const { begin, end } = await watched('many', 0.4);
  const from = process.cpuUsage();
  let begun = 0;
  while (process.cpuUsage(from).user < 1e6) {
    begun += 1;
    begin(begun);
  }
  expect(begun).toBeGreaterThan(1);
  await end();
});
