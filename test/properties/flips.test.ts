import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement, Decision } from '../../src/rules/decision.ts';
import { keysOf, numberAt, withNumber } from '../../src/rules/flips/value-at.ts';
import { demoDecisions } from '../report/demo-decisions.ts';
import { anyShop, built } from './random-shops.ts';

const RUNS = { numRuns: 30, seed: 20260711 };

/** Whether the arrangement gets through with this number changed, everything else decided anew. */
function passesWith(
  { inputs: { answers, catalog } }: Decision,
  { id }: Arrangement,
  path: string,
  value: number,
): boolean {
  const ground = { answers, catalog };
  const keys = keysOf(path, ground);
  if (keys === null) throw new Error(`nothing stands at ${path}`);
  const changed = withNumber(ground, keys, value);
  const again = decide(changed.answers, changed.catalog, { all: true, traces: false });
  return again.arrangements.find((each) => each.id === id)?.passes !== 'no';
}

/** A hair: what a flip is known to, and what its digits may add. */
const HAIR = 3e-4;

function faultsOf(decision: Decision): readonly string[] {
  return decision.arrangements.flatMap((arrangement) =>
    arrangement.flips.flatMap(({ change, from, to }) => {
      if (typeof from !== 'number') return [`${change} has no value`];
      const short = to + Math.sign(from - to) * Math.min(HAIR * from, Math.abs(to - from) / 2);
      return [
        ...(numberAt({ ...decision.inputs }, keysOf(change, decision.inputs) ?? []) === from
          ? []
          : [`${change} is not ${from}`]),
        ...(passesWith(decision, arrangement, change, to)
          ? []
          : [`${arrangement.id}: ${change} ${from} to ${to} does not do`]),
        ...(passesWith(decision, arrangement, change, short)
          ? [`${arrangement.id}: ${change} ${short} is enough, not ${to}`]
          : []),
      ];
    }),
  );
}

describe('what would let an arrangement through', () => {
  test('does, and a hair short of it does not: random shops', () => {
    let told = 0;
    fc.assert(
      fc.property(anyShop, (shop) => {
        const { answers, catalog } = built(shop);
        const decision = decide(answers, catalog, { flips: [] });
        told += decision.arrangements.flatMap(({ flips }) => flips).length;
        expect(faultsOf(decision)).toEqual([]);
      }),
      RUNS,
    );
    expect(told).toBeGreaterThan(20);
  });

  test.each(
    demoDecisions().filter(([name]) => ['shop', 'shop-own-mill', 'shop-hand-lifting'].includes(name)),
  )('does, and a hair short of it does not: %s', (_, decision) => {
    expect(decision.arrangements.flatMap(({ flips }) => flips).length).toBeGreaterThan(0);
    expect(faultsOf(decision)).toEqual([]);
  });

  test('is told of what does not pass, and of nothing else', () => {
    for (const [, { arrangements }] of demoDecisions()) {
      for (const { passes, flips } of arrangements) if (passes !== 'no') expect(flips).toEqual([]);
    }
  });
});

describe('the shop of the story', () => {
  const found = demoDecisions().find(([name]) => name === 'shop')?.[1];
  const flipsOf = (id: string) => found?.arrangements.find((each) => each.id === id)?.flips ?? [];

  test('9000 EUR more would buy the larger rotary', () => {
    expect(flipsOf('alder+turnstone/tilt-along-x')).toEqual([
      { change: 'money.budget', from: 172000, to: 181000 },
    ]);
  });

  test('7 mm of tool, of spindle or of center height would do where the reach is 7 mm short', () => {
    expect(flipsOf('rowan+crake/tilt-along-x')).toEqual([
      { change: 'machines[rowan].noseToTable[1]', from: 520, to: 527 },
      { change: 'rotaries[crake].centerHeight', from: 205, to: 198 },
      { change: 'tools.longest', from: 190, to: 183 },
    ]);
  });
});
