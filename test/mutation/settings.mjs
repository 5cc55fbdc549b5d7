// What both runs of the mutation test share. Paths are those of the project.

/** @param {string} name names the report  @param {readonly string[]} mutate files, as globs */
export const settings = (name, mutate) => {
  // Mutants are put into a copy in which comments have moved; the tests read doc comments from the original.
  process.env.SOURCES_AS_WRITTEN = process.cwd();
  process.env.MUTATED = name;
  return {
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner', new URL('words-and-examples.mjs', import.meta.url).pathname],
    ignorers: ['words-and-examples'],
    vitest: { configFile: 'test/mutation/vitest.config.ts', related: false },
    buildCommand: 'node test/mutation/bundle-tests.mjs',
    mutate,
    coverageAnalysis: 'perTest',
    concurrency: 1,
    timeoutMS: 20_000,
    incremental: true,
    incrementalFile: `reports/mutation/${name}-incremental.json`,
    reporters: ['progress-append-only', 'clear-text', 'json', 'html'],
    clearTextReporter: { logTests: false, reportTests: false, allowColor: false },
    jsonReporter: { fileName: `reports/mutation/${name}.json` },
    htmlReporter: { fileName: `reports/mutation/${name}.html` },
    tempDirName: `.stryker-tmp/${name}`,
    ignorePatterns: ['.stryker-tmp', 'dist', 'bench', 'reports'],
    disableTypeChecks: false,
    thresholds: { high: 95, low: 85, break: 85 },
  };
};
