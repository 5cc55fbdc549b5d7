import { describe, expect, test } from 'vitest';
import { tableLoad } from '../../src/rules/checks/machine/table-load.ts';
import { exampleWorld, judgeExample } from './example-shop.ts';

describe('a plate under a rotary of which nobody says how large its base is', () => {
  const given = {
    plates: 30,
    rotary: { mass: 900, base: { along: 'unknown', across: 'unknown' } },
    machine: { table: { load: 400 } },
  } as const;

  test('weighs something or other, and never less than nothing', () => {
    const [of] = exampleWorld(given).cases;
    expect(of?.plateMass.low).toBe(0);
    expect(of?.plateMass.high).toBe(Number.POSITIVE_INFINITY);
  });

  test('so that a rotary too heavy by itself is found out', () => {
    expect(judgeExample(tableLoad, given).verdict).toBe('fails');
  });
});
