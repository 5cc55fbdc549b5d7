import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Machine, Mounting, Rotary } from '../../src/catalog/catalog.ts';
import type { Part } from '../../src/questions/answers.ts';
import { groundOf, withPart } from '../../src/rules/arranging/setting.ts';
import { EXAMPLE_HOIST } from '../../src/rules/checks/example-means.ts';
import { CHECKS } from '../../src/rules/checks/index.ts';
import { machineCase } from '../../src/rules/facts/machine-facts.ts';
import { partCases } from '../../src/rules/facts/part-facts.ts';
import { builtInCase, onItsBack, rotaryCase } from '../../src/rules/facts/rotary-facts.ts';
import { shopCase } from '../../src/rules/facts/shop-facts.ts';
import type { Case } from '../../src/rules/judging/case.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import { freshMemo, type Memo } from '../../src/rules/judging/memo.ts';
import { evaluateSide } from '../../src/rules/judging/side.ts';
import { known } from '../../src/rules/judging/value.ts';
import { EXAMPLE_ANSWERS } from '../rules/example-shop.ts';
import { anyPart, anySetting, anyStand } from './random-shop.ts';
import { sidesOf } from './terms-of.ts';

/**
 * A side is worked out once for each combination of what it says that it is of. Here one thing at a time is put in place of
 * another; whatever a side then comes to must be what it comes to where nothing is kept.
 */

interface Stood {
  readonly part: Part;
  readonly rotary: Rotary;
  readonly machine: Machine;
  readonly mounting: Mounting;
  readonly raised: number;
  readonly heightened: number;
  readonly plates: number;
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
  readonly price: number;
  readonly swaps: number;
}

const factor = fc.double({ min: 0.5, max: 2, noNaN: true });
const offered = fc.constantFrom('standard' as const, 3000, undefined);

/** What the random shops leave as it is in the example: the outside of a machine, and what its control can do. */
const anyStood: fc.Arbitrary<Stood> = fc
  .record({
    part: anyPart,
    stand: anyStand,
    setting: anySetting,
    by: factor,
    features: fc.record({
      toolCenterPoint: offered,
      rotatingWorkOffset: offered,
      tiltedWorkPlane: offered,
      lookAhead: offered,
    }),
    heightened: fc.constantFrom(0, 100),
    price: fc.integer({ min: 1, max: 300_000 }),
    swaps: fc.constantFrom(0, 48, 144),
  })
  .map(({ part, stand: { rotary, machine, mounting }, setting, by, features, heightened, price, swaps }) => ({
    part,
    mounting,
    heightened,
    price,
    swaps,
    x: setting.place.x,
    y: setting.place.y,
    raised: setting.raised,
    plates: setting.plates,
    turned: setting.place.turned,
    rotary: {
      ...rotary,
      height: 300 * by,
      air: { bar: 5 * by },
      tailstock: { length: 150 * by, price: 2000 },
      hold: Object.fromEntries(
        Object.keys(rotary.hold).map((key) => [key, { keyWidth: 18 * by, pitches: [80 * by] }]),
      ) as unknown as Rotary['hold'],
    },
    machine: {
      ...machine,
      features: Object.fromEntries(
        Object.entries({ ...machine.features, ...features }).filter(([, price]) => price !== undefined),
      ),
      footprint: [2400 * by, 2100 * by, 2700 * by],
      service: { left: 600 * by, right: 600 * by, front: 1000 * by, rear: 900 * by },
      shipping: [2300 * by, 2000 * by, 2500 * by],
      mass: 3600 * by,
      power: { kVA: 28 * by, volts: 400 * by, phases: by > 1 ? 3 : 1 },
      air: { flow: 110 * by, bar: 6 * by },
    },
  }));

/** The same as a bar in a collet: chance makes hardly any. */
const anyBar: fc.Arbitrary<Stood> = fc
  .record({ stood: anyStood, alongX: fc.boolean() })
  .map(({ stood: { part, rotary, machine, ...others }, alongX }) => ({
    ...others,
    part: { ...part, shape: 'round', approaches: ['around'], holding: { ...part.holding, by: 'collet' } },
    rotary: { ...rotary, class: 'collet-indexer', collet: Number(rotary.mass) / 10 },
    machine: { ...machine, spindle: 'vertical', builtIn: null },
    mounting: alongX ? 'axis-along-x' : 'axis-along-y',
  }));

/** Two hoists, so that the mass of what they lift says which of them counts. */
const HOISTS = [EXAMPLE_HOIST, { ...EXAMPLE_HOIST, capacity: 250, hookHeight: 4000 }];
const shop = shopCase({
  ...EXAMPLE_ANSWERS,
  parts: [],
  shop: { ...EXAMPLE_ANSWERS.shop, lifting: HOISTS },
});

/** A case whose parts have names of their own wherever they differ. */
function caseOf(
  memo: Memo,
  stood: Stood,
  names: Readonly<Record<'part' | 'rotary' | 'machine', string>>,
): Case {
  const row = { ...stood.machine, id: names.machine };
  const machine = machineCase(row);
  const rotary = rotaryCase({ ...stood.rotary, id: names.rotary });
  const lies = rotary.axes === 1 && row.spindle === 'horizontal';
  const candidate =
    row.builtIn === null
      ? { id: 'any', machine, rotary: lies ? onItsBack(rotary) : rotary, mounting: stood.mounting }
      : { id: 'any', machine, rotary: builtInCase(row, row.builtIn), mounting: 'built-in' as const };
  const addition = { kind: 'lowered-table', adds: stood.raised, price: 0, height: stood.heightened } as const;
  const setting = {
    additions: [addition],
    plates: stood.plates,
    place: { x: 0, y: 0, turned: stood.turned },
  };
  const ground = groundOf(
    { shop, memo },
    candidate,
    setting,
    known(stood.price, 'price'),
    known(stood.swaps, 'swaps'),
  );
  const [part] = partCases({ ...stood.part, name: names.part }, shop);
  if (part === undefined) throw new Error('no case');
  return withPart(ground, part);
}

const NAMES = { part: 'one', rotary: 'one', machine: 'one' };
const ROOMS = [
  ...(['part', 'rotary', 'machine', 'mounting', 'raised', 'heightened', 'plates', 'turned'] as const),
  ...(['x', 'y', 'price', 'swaps'] as const),
];

const endsOf = (check: Check, of: Case): readonly (readonly [number, number])[] =>
  sidesOf(check, of)
    .map((side) => evaluateSide(side, of))
    .map(({ low, high }) => [low, high]);

interface Pair {
  readonly before: Case;
  readonly after: Case;
  /** the same as after, with nothing kept from before */
  readonly afresh: Case;
}

const SHOPS = [
  ...fc.sample(fc.tuple(anyStood, anyStood), { numRuns: 24, seed: 20260115 }),
  ...fc.sample(fc.tuple(anyBar, anyBar), { numRuns: 4, seed: 20260115 }),
];

const pairsOf = (room: (typeof ROOMS)[number]): readonly Pair[] =>
  SHOPS.map(([one, other]) => {
    const changed = { ...one, [room]: other[room] };
    const names = room in NAMES ? { ...NAMES, [room]: 'other' } : NAMES;
    const memo = freshMemo();
    return {
      before: caseOf(memo, one, NAMES),
      after: caseOf(memo, changed, names),
      afresh: caseOf(freshMemo(), changed, names),
    };
  });

const PAIRS = ROOMS.map((room) => [room, pairsOf(room)] as const);

describe.each(CHECKS.map((check): [string, Check] => [check.id, check]))('%s', (_id, check) => {
  test.each(PAIRS)('each side says that it hangs on the %s where it does', (_room, pairs) => {
    let compared = 0;
    for (const { before, after, afresh } of pairs) {
      if (check.applies(before)) endsOf(check, before);
      if (!check.applies(after)) continue;
      const found = endsOf(check, after);
      compared += found.length;
      expect(found).toEqual(endsOf(check, afresh));
    }
    expect(compared).toBeGreaterThan(0);
  });
});
