import { withPart } from '../../src/rules/arranging/setting.ts';
import { bitsOf } from '../../src/rules/fast/family-bits.ts';
import { flatsOf } from '../../src/rules/fast/flats.ts';
import { halfTablesOn } from '../../src/rules/fast/half-tables.ts';
import { havesOn } from '../../src/rules/fast/have-rows.ts';
import { pairLookup } from '../../src/rules/fast/pair-sets.ts';
import { type Haves, pairsInWork } from '../../src/rules/fast/pair-tables.ts';
import type { Case } from '../../src/rules/judging/case.ts';
import { freshMemo } from '../../src/rules/judging/memo.ts';
import { judge } from '../../src/rules/judging/outcome.ts';
import type { Anchor } from './counts.ts';
import { DECLARED } from './declared.ts';
import { bitsIn } from './masks.ts';
import { groundOn, type Halves, NO_SHOP, ownWorld } from './own-cases.ts';

/** The judge of the engine: verdict and numbers of each check; its reasons are traced when somebody looks. */
export const ownJudge: Anchor = (world) => {
  const { families, rotaries, machines, mountings, raised } = ownWorld(world);
  return () => {
    const memo = freshMemo();
    let held = 0;
    let passed = 0;
    for (const rotary of rotaries)
      for (const machine of machines)
        for (const mounting of mountings)
          for (const raise of raised) {
            const ground = groundOn(memo, { rotary, machine, mounting, raised: raise });
            for (const { cases } of families) {
              let holds = 0;
              for (const part of cases) {
                const of = withPart(ground, part);
                for (const check of DECLARED) if (judge(check, of).verdict === 'holds') holds += 1;
              }
              held += holds;
              if (holds === DECLARED.length) passed += 1;
            }
          }
    return { held, passed };
  };
};

/** The tables of the engine: which half a check reads is found by trying, and the rest is ranked. */
export const ownTables: Anchor = (world) => {
  const { families, rotaries, machines, mountings, raised } = ownWorld(world);
  return () => {
    const bits = bitsOf(families);
    const { words } = bits;
    const flats = flatsOf(families, NO_SHOP);
    const memo = freshMemo();
    const grounds = (of: Partial<Halves>): Case => groundOn(memo, of);
    const stands = rotaries.flatMap((rotary) => mountings.map((mounting) => ({ rotary, mounting })));
    const rows = machines.flatMap((machine) => raised.map((raise) => ({ machine, raised: raise })));
    const alone = (ground: Case) => ({ anyWay: ground, ways: [] });
    const onRows = halfTablesOn(
      rows.map((row) => () => alone(grounds(row))),
      DECLARED,
      flats,
      bits,
    );
    const left = DECLARED.filter((check) => !onRows.some((each) => each.check === check));
    const haves: Haves = { sides: [] };
    const work = pairsInWork(left, flats, bits, haves);
    const onStands = halfTablesOn(
      stands.map((stand) => () => alone(grounds(stand))),
      left,
      flats,
      bits,
      work.fill,
    );
    const pairs = work.pairs().filter(({ check }) => !onStands.some((each) => each.check === check));
    const put = havesOn(haves.sides, NO_SHOP);
    const width = haves.sides.length * 2;
    // a have takes the mounting beside the row at most
    const there = mountings.map((mounting) => {
      const all = new Float64Array(rows.length * width);
      rows.forEach((row, at) => {
        put(grounds({ ...row, mounting }), all, at * width);
      });
      return all;
    });
    const lookup = pairLookup(words, 'fails');
    const every = families.length * DECLARED.length;
    const sum = new Uint32Array(words);
    const failing = [...onStands, ...onRows].map(({ fails }) => countsIn(fails, words));
    let held = 0;
    let passed = 0;
    stands.forEach((_, stand) => {
      const from = there[stand % mountings.length] as Float64Array;
      let ofStand = 0;
      onStands.forEach((__, at) => {
        ofStand += failing[at]?.[stand] ?? 0;
      });
      rows.forEach((__, row) => {
        sum.fill(0);
        let failed = ofStand;
        onRows.forEach((___, at) => {
          failed += failing[onStands.length + at]?.[row] ?? 0;
        });
        for (const { fails } of onStands) add(sum, fails, stand * words);
        for (const { fails } of onRows) add(sum, fails, row * words);
        for (const pair of pairs) {
          const found = lookup(pair, stand, from, row * width);
          for (let word = 0; word < words; word += 1) failed += bitsIn(found[word] as number);
          add(sum, found, 0);
        }
        held += every - failed;
        let fallen = 0;
        for (let word = 0; word < words; word += 1) fallen += bitsIn(sum[word] as number);
        passed += families.length - fallen;
      });
    });
    return { held, passed };
  };
};

function add(sum: Uint32Array, sets: Uint32Array, from: number): void {
  for (let word = 0; word < sum.length; word += 1)
    sum[word] = (sum[word] as number) | (sets[from + word] as number);
}

function countsIn(sets: Uint32Array, words: number): Uint32Array {
  const counts = new Uint32Array(sets.length / words);
  sets.forEach((word, at) => {
    const row = Math.floor(at / words);
    counts[row] = (counts[row] as number) + bitsIn(word);
  });
  return counts;
}
