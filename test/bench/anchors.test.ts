import { describe, expect, test } from 'vitest';
import { ANCHORS } from '../../bench/anchors/index.ts';
import { casesIn, worldOf } from '../../bench/anchors/world.ts';

describe.each([
  { machines: 3, rotaries: 4, parts: 9 },
  { machines: 2, rotaries: 3, parts: 33 },
  { machines: 1, rotaries: 2, parts: 64 },
])('twelve checks on $machines machines, $rotaries rotaries and $parts parts', (size) => {
  const world = worldOf(size);

  test('come to the same verdicts however they are judged', async () => {
    const expected = await ANCHORS.lazyTraces(world)();
    expect(expected.passed).toBeGreaterThan(0);
    expect(expected.passed).toBeLessThan(casesIn(world) / 2);
    expect(expected.held).toBeGreaterThan(casesIn(world) * 6);
    for (const [name, anchor] of Object.entries(ANCHORS)) {
      const run = anchor(world);
      expect({ name, ...(await run()) }).toEqual({ name, ...expected });
      // nothing is left over from the run before
      expect({ name, ...(await run()) }).toEqual({ name, ...expected });
    }
  });
});
