import { expect, test } from 'vitest';
import { decide } from '../../src/rules/decide.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_PART, EXAMPLE_ROTARY } from './example-shop.ts';

const rotary = (id: string, swing: number) => ({ ...EXAMPLE_ROTARY, id, swing });

test('a swing short by a little is nearer than one short by half, and one check nearer than two', () => {
  const parts = [{ ...EXAMPLE_PART, size: [200, 150, 40] as const, mass: 3 }];
  const weak = { ...rotary('half-and-weak', 125), payload: { level: 5, tilted: 3 } };
  const catalog = { ...EXAMPLE_CATALOG, rotaries: [weak, rotary('half', 125), rotary('nearly', 240)] };
  const { outcome, nearestMisses } = decide({ ...EXAMPLE_ANSWERS, parts }, catalog);
  expect(outcome).toBe('none');
  const rotaries = nearestMisses.map((id) => id.replace(/^.*\+(.*)\/.*$/, '$1'));
  expect([...new Set(rotaries)]).toEqual(['nearly', 'half', 'half-and-weak']);
});
