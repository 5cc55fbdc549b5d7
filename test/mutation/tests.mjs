// The quick tests of what is mutated, what costs least first: the first test that fails ends a mutant.
const TESTS = {
  mechanics: ['test/mechanics/', 'test/published/'],
  checks: [
    'test/rules/check-examples.test.ts',
    'test/rules/checks/',
    'test/properties/rooms.test.ts',
    'test/properties/directions.test.ts',
  ],
};

/** Files and folders of tests, in order, for the run that the environment names. */
export const tests = TESTS[process.env.MUTATED ?? ''] ?? [];

/** Where they stand once they are bundled, in the copy that the mutants are in. */
export const BUNDLED = 'bundled-tests';
