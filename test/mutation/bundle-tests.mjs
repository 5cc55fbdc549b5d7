// Bundles the tests with the mutated sources: one file to load for each mutant instead of some two hundred.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { BUNDLED, tests } from './tests.mjs';

const filesIn = (folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.test.ts'))
    .map((path) => join(folder, path));

await build({
  entryPoints: tests.flatMap((each) => (each.endsWith('/') ? filesIn(each) : [each])),
  outdir: BUNDLED,
  outbase: '.',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  splitting: true,
  platform: 'node',
  format: 'esm',
  external: ['vitest'],
  logLevel: 'warning',
});
