import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    // a limit against hanging, and no measure: some tests take a minute where other programs run
    testTimeout: 240_000,
    hookTimeout: 240_000,
    // by itself it leaves a processor free, of two: half of the time
    maxWorkers: '100%',
    reporters: ['default'],
  },
});
