import { describe, expect, test } from 'vitest';
import { bothWays } from '../../src/report/sections/both-ways.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { demoDecisions } from '../report/demo-decisions.ts';
import { blockText } from '../report/section-text.ts';

const DEMOS = demoDecisions();
const demo = (shop: string): Decision => {
  const found = DEMOS.find(([name]) => name === shop);
  if (found === undefined) throw new Error(`no demo shop ${shop}`);
  return found[1];
};

const most = (value: unknown): number => (Array.isArray(value) ? Number(value[1]) : Number(value));

test.each(DEMOS)(
  '%s: the vises on both sides are the vise stations, and a built-in table has no sides',
  (_, decision) => {
    expect(decision.arrangements.length).toBeGreaterThan(0);
    for (const { mounting, space, measures } of decision.arrangements) {
      if (mounting === 'built-in') expect(space).toBeNull();
      if (space === null || decision.outcome === 'open') continue;
      expect(most(space.stationsLeft) + most(space.stationsRight)).toBe(most(measures.viseStations));
    }
  },
);

test.each(DEMOS)(
  '%s: the other way round is the same machine and rotary, and it is listed',
  (_, decision) => {
    const { recommended, otherWay, arrangements } = decision;
    if (recommended === null) {
      expect(otherWay).toBeNull();
      return;
    }
    const [a, b] = [recommended, otherWay].map((id) => arrangements.find((each) => each.id === id));
    if (b === undefined) {
      expect(otherWay).toBeNull();
      return;
    }
    expect([b.machine, b.rotary]).toEqual([a?.machine, a?.rotary]);
    expect(b.mounting).not.toBe(a?.mounting);
  },
);

describe('both ways, in words', () => {
  test('what the other way would have cost, and that it passes', () => {
    const text = blockText(bothWays(demo('shop')), demo('shop'));
    expect(text).toContain('Alder with Lapwing (tilt axis along X) passes too');
    expect(text).toMatch(/Vise stations\W+2\W+1/);
    expect(text).toMatch(/Base on the table\W+500 mm of 508 mm/);
  });

  test('what drops the other way', () => {
    const text = blockText(bothWays(demo('shop-own-mill')), demo('shop-own-mill'));
    expect(text).toContain('was dropped at fit on the machine, by base on the table.');
  });

  test('nothing is said where nothing is recommended', () => {
    expect(bothWays(demo('shop-nothing-passes'))).toEqual([]);
  });
});
