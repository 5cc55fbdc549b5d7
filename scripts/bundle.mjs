import { chmod, readFile, rm } from 'node:fs/promises';
import { build } from 'esbuild';

// What the drawing library asks for in development only.
const STUBS = {
  name: 'stubs',
  setup(build) {
    build.onResolve({ filter: /^(react-devtools-core|ws)$/ }, ({ path }) => ({ path, namespace: 'stub' }));
    build.onLoad({ filter: /.*/, namespace: 'stub' }, () => ({
      contents: 'export default { initialize() {}, connectToDevTools() {} };',
      loader: 'js',
    }));
  },
};

// The command line starts no other programs; what could do so takes time to load.
const NO_PROGRAMS = {
  name: 'no-programs',
  setup(build) {
    build.onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
      /node_modules\/commander\//.test(importer)
        ? { path: 'node:child_process', namespace: 'none' }
        : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: 'none' }, () => ({
      contents: 'module.exports = {};',
      loader: 'js',
    }));
  },
};

// Widths of text are asked for all the time; ours answers at once for what is one column a character.
const FAST_WIDTH = {
  name: 'fast-width',
  setup(build) {
    build.onResolve({ filter: /^string-width$/ }, ({ importer }) =>
      importer.endsWith('fast-width.mjs')
        ? undefined
        : { path: new URL('fast-width.mjs', import.meta.url).pathname },
    );
  },
};

// The drawing library takes the looks of each line apart, at every frame again; ours remembers the lines.
const FAST_LINES = {
  name: 'fast-lines',
  setup(build) {
    build.onResolve({ filter: /^@alcalzone\/ansi-tokenize$/ }, ({ importer }) =>
      /ink\/build\/output\.js$/.test(importer)
        ? { path: new URL('fast-lines.mjs', import.meta.url).pathname }
        : undefined,
    );
  },
};

const PROGRAM = { main: 'src/main.ts', 'decide-worker': 'src/ui/judging/decide-worker.ts' };

/** Bundles the program, or other entries the same way, into a folder; gives what went into each file. */
export async function bundle(outdir, entryPoints = PROGRAM) {
  const { version } = JSON.parse(await readFile(new URL('../package.json', import.meta.url), 'utf8'));
  await rm(outdir, { recursive: true, force: true });
  const { metafile } = await build({
    entryPoints,
    absWorkingDir: new URL('..', import.meta.url).pathname,
    outdir,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    minify: true,
    legalComments: 'none',
    metafile: true,
    plugins: [STUBS, NO_PROGRAMS, FAST_WIDTH, FAST_LINES],
    // The same parser as modules: what is not used of it stays out, and what is used runs sooner.
    alias: { yaml: './node_modules/yaml/browser/index.js' },
    // Without `fetch` the layout library decodes its program directly, which is faster.
    define: {
      'process.env.NODE_ENV': '"production"',
      fetch: 'undefined',
      FIVESIDES_VERSION: JSON.stringify(version),
    },
    // For bundled CommonJS packages: they load Node's own modules with `require`, and read their own `__filename`.
    // Every file begins with it, so it has to cost nothing.
    banner: {
      js: 'const require=id=>process.getBuiltinModule(id),__filename=import.meta.filename;',
    },
    logLevel: 'warning',
  });
  if ('main' in entryPoints) await chmod(`${outdir}/main.js`, 0o755);
  return metafile;
}
