// Runs a TypeScript script of this folder, or one named by its path: node scripts/run.mjs turned-senses [arguments]
import { mkdtemp, rm } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [script, ...rest] = process.argv.slice(2);
const folder = await mkdtemp(join(process.cwd(), '.script-'));
const entry = script.endsWith('.ts') ? script : `scripts/${script}.ts`;
const outfile = join(folder, `${basename(entry, '.ts')}.mjs`);
try {
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    // scripts that look for what is beside them
    external: ['./scripts/*.mjs'],
    logLevel: 'warning',
  });
  process.argv = [process.argv[0], outfile, ...rest];
  await import(pathToFileURL(outfile).href);
} finally {
  await rm(folder, { recursive: true, force: true });
}
