// Writes the JSON Schemas of answers and catalogs, for editors; a test fails when they drift from the program.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';

const { outputFiles } = await build({
  entryPoints: ['scripts/schemas.ts'],
  bundle: true,
  format: 'esm',
  platform: 'node',
  write: false,
});
const [bundle] = outputFiles;
const { schemaTexts } = await import(
  `data:text/javascript;base64,${Buffer.from(bundle.text).toString('base64')}`
);
await mkdir('schemas', { recursive: true });
for (const [name, text] of Object.entries(schemaTexts())) {
  await writeFile(join('schemas', name), text);
  console.log(`schemas/${name}`);
}
