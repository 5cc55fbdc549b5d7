import { expect, test } from 'vitest';
import { countOf, INPUTS, LONGEST_S, runCase } from './cases.ts';
import { watched } from './watched.ts';

/** Far more than a case takes: what hangs is found, whatever else runs. */
const LONGEST_A_CASE_MS = 500;
/** In all that runs the cases, the runner of tests included. */
const MOST_MEMORY_KB = 1024 * 1024;

test('the shares of the inputs are the whole', () => {
  expect(INPUTS.reduce((sum, { share }) => sum + share, 0)).toBe(1000);
});

for (const input of INPUTS) {
  const count = countOf(input);
  test(`${input.name}: ${count} spoiled inputs are refused in words or taken rightly`, {
    timeout: 60_000 + count * LONGEST_A_CASE_MS,
  }, async () => {
    const seeds = input.seeds();
    const came = { taken: 0, refused: 0 };
    const watch = await watched(input.name, 2 * LONGEST_S);
    try {
      for (let number = 0; number < count; number += 1) {
        watch.begin(number);
        came[await runCase(input, seeds, number)] += 1;
      }
    } finally {
      await watch.end();
    }
    expect(process.resourceUsage().maxRSS).toBeLessThan(MOST_MEMORY_KB);
    // neither is all noise, nor all good
    expect(came.taken, JSON.stringify(came)).toBeGreaterThan(count / 50);
    if (input.name !== 'terminal') expect(came.refused, JSON.stringify(came)).toBeGreaterThan(count / 10);
    console.info(input.name, JSON.stringify(came), `${process.resourceUsage().maxRSS} KB at most`);
  });
}
