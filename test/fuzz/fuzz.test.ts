import { expect, test } from 'vitest';
import { countOf, INPUTS, runCase } from './cases.ts';

/** Far more than a case takes: what hangs is found, whatever else runs. */
const LONGEST_A_CASE_MS = 500;

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
    for (let number = 0; number < count; number += 1) came[await runCase(input, seeds, number)] += 1;
    // neither is all noise, nor all good
    expect(came.taken, JSON.stringify(came)).toBeGreaterThan(count / 50);
    if (input.name !== 'terminal') expect(came.refused, JSON.stringify(came)).toBeGreaterThan(count / 10);
    console.info(input.name, JSON.stringify(came));
  });
}
