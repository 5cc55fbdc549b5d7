// Runs a TypeScript script of this folder: node scripts/run.mjs turned-senses [arguments]
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [name, ...rest] = process.argv.slice(2);
const folder = await mkdtemp(join(process.cwd(), '.script-'));
const outfile = join(folder, `${name}.mjs`);
try {
  await build({
    entryPoints: [`scripts/${name}.ts`],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  process.argv = [process.argv[0], outfile, ...rest];
  await import(pathToFileURL(outfile).href);
} finally {
  await rm(folder, { recursive: true, force: true });
}
