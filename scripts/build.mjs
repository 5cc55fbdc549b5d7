// Bundles the program: ESM with splitting, so that a command loads only what it needs.
import { chmod, readFile, rm } from 'node:fs/promises';
import { build } from 'esbuild';

const { version } = JSON.parse(await readFile('package.json', 'utf8'));
await rm('dist', { recursive: true, force: true });
await build({
  entryPoints: ['src/main.ts'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'none',
  define: { 'process.env.NODE_ENV': '"production"', FIVESIDES_VERSION: JSON.stringify(version) },
  // For bundled CommonJS packages: they load Node's modules with `require` and read their own `__filename`.
  banner: {
    js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url),__filename=import.meta.filename??import.meta.url;",
  },
  logLevel: 'warning',
});
await chmod('dist/main.js', 0o755);
