/** The example shop belongs to the explanations, which print what the tests run. */
export * from '../../src/teaching/examples/example-rows.ts';
export * from '../../src/teaching/examples/example-world.ts';
