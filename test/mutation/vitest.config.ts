import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { BUNDLED, tests } from './tests.mjs';

/** In the order in which they are listed. */
class AsListed extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number =>
      tests.findIndex((each) => moduleId.includes(join(BUNDLED, each.replace(/\.ts$/, ''))));
    return [...files].sort((a, b) => rank(a) - rank(b) || (a.moduleId < b.moduleId ? -1 : 1));
  }
}

export default defineConfig({
  test: {
    include: [`${BUNDLED}/**/*.test.mjs`],
    testTimeout: 60_000,
    // what is bundled is loaded as it is
    server: { deps: { external: [new RegExp(`/${BUNDLED}/chunk-`)] } },
    sequence: { sequencer: AsListed },
    // one worker for all files of a mutant: it loads what they share once
    isolate: false,
  },
});
