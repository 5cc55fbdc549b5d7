import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers, Uncertain } from '../../src/questions/answers.ts';
import { groundOf, type Setting } from '../../src/rules/arranging/setting.ts';
import { EXAMPLE_FORKLIFT, EXAMPLE_HANDS } from '../../src/rules/checks/example-means.ts';
import type { Verdict } from '../../src/rules/decision.ts';
import {
  FIXED_CHECKS,
  judgeFamily,
  judgeOwn,
  OWN_CHECKS,
  SETTING_CHECKS,
} from '../../src/rules/judging/judge-family.ts';
import type { Outcome } from '../../src/rules/judging/outcome.ts';
import { type Standing, standingOf } from '../../src/rules/standing.ts';
import { EXAMPLE_ANSWERS } from '../rules/example-shop.ts';
import { narrowing, uniform } from './narrowed.ts';
import { anyShop, built, type Shop } from './random-shops.ts';

/**
 * Whoever finds out more never has to take back what was sure: *holds* and *fails* stay, whatever the answers that
 * were open turn out to be. *Holds if* may become *holds*: that the measure suffices was sure, that it is needed was not, and
 * what is found out may show that it is not. It never becomes *fails* or *open*; but where the same check has something
 * to be told that enters no verdict, that shows once no measure is needed.
 */
type Said = Verdict | 'told';
const ALLOWED: Readonly<Record<Said, readonly Said[]>> = {
  holds: ['holds'],
  'holds if': ['holds', 'holds if', 'told'],
  fails: ['fails'],
  open: ['holds', 'holds if', 'fails', 'open', 'told'],
  told: ['holds', 'holds if', 'fails', 'open', 'told'],
};

/** The random shop with something in every answer. */
function knownShop(shop: Shop): { readonly answers: Answers; readonly catalog: Catalog } {
  const { answers, catalog } = built(shop);
  return {
    catalog,
    answers: {
      ...answers,
      shop: {
        ...answers.shop,
        lifting: [
          ...(EXAMPLE_ANSWERS.shop.lifting === 'unknown' ? [] : EXAMPLE_ANSWERS.shop.lifting),
          { ...EXAMPLE_FORKLIFT, capacity: 700 },
          { ...EXAMPLE_HANDS, people: 2, reach: 400, from: 700, lift: 300 },
        ],
      },
      money: { ...answers.money, residual: 15000 },
    },
  };
}

type Settings = ReadonlyMap<string, Setting>;

const settingsOf = ({ judged }: Standing): Settings =>
  new Map(judged.map(({ id, setUp }) => [id, setUp.setting]));

/** Every check of every arrangement as it is set up there, on the answers of this standing. */
function verdictsOn({ world, fiveAxis, judged }: Standing, settings: Settings): ReadonlyMap<string, Said> {
  const found = new Map<string, Said>();
  const note = (key: string, { advisory, verdict }: Outcome): void => {
    found.set(key, advisory ? 'told' : verdict);
  };
  for (const { id, setUp } of judged) {
    const setting = settings.get(id);
    if (setting === undefined) continue;
    const ground = groundOf(world, setUp.candidate, setting);
    for (const each of judgeOwn(world, ground, OWN_CHECKS)) note(`${id} ${each.check.id}`, each);
    for (const family of fiveAxis) {
      for (const each of judgeFamily(world, ground, family, [...FIXED_CHECKS, ...SETTING_CHECKS]))
        note(`${id} ${each.check.id} ${family.name}`, each);
    }
  }
  return found;
}

const drawn = fc.record({
  shop: anyShop,
  seed: fc.integer({ min: 1, max: 2 ** 31 - 2 }),
  open: fc.constantFrom(0.03, 0.1, 0.3),
});

describe('knowing an answer better', () => {
  test('never turns what a check surely said of an arrangement as it is set up', () => {
    const seen: Record<Said, number> = { holds: 0, 'holds if': 0, fails: 0, open: 0, told: 0 };
    fc.assert(
      fc.property(drawn, ({ shop, seed, open }) => {
        const { answers, catalog } = knownShop(shop);
        const { before, after, changed } = narrowing(answers, uniform(seed), open);
        const wide = standingOf(before, catalog);
        const settings = settingsOf(wide);
        const first = verdictsOn(wide, settings);
        const then = verdictsOn(standingOf(after, catalog), settings);
        for (const [key, verdict] of first) {
          seen[verdict] += 1;
          // a check that does not apply any more asks for nothing
          const now = then.get(key) ?? 'holds';
          expect(ALLOWED[verdict], `${key}: ${verdict} became ${now} with ${changed.join(', ')}`).toContain(
            now,
          );
        }
        for (const [key, verdict] of then) {
          if (!first.has(key))
            expect(['holds', 'open', 'told'], `${key}: ${verdict} came up`).toContain(verdict);
        }
      }),
      { numRuns: 60, seed: 20260712 },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(100);
  });

  test('never turns what surely passes or fails, nor a recommendation', () => {
    const seen = { yes: 0, no: 0, open: 0, recommended: 0, none: 0 };
    fc.assert(
      fc.property(drawn, ({ shop, seed, open }) => {
        const { answers, catalog } = knownShop(shop);
        const { before, after, changed } = narrowing(answers, uniform(seed), open);
        const wide = standingOf(before, catalog);
        const narrow = standingOf(after, catalog);
        const now = new Map(narrow.judged.map(({ id, passes }) => [id, passes]));
        for (const { id, passes } of wide.judged) {
          seen[passes] += 1;
          if (passes !== 'open') expect(now.get(id), `${id} with ${changed.join(', ')}`).toBe(passes);
        }
        if (wide.outcome !== 'open') {
          seen[wide.outcome] += 1;
          expect(narrow.outcome, changed.join(', ')).toBe(wide.outcome);
          expect(narrow.ranking.winner, changed.join(', ')).toBe(wide.ranking.winner);
        }
        if (narrow.ranking.winner !== null)
          expect(wide.ranking.contenders, changed.join(', ')).toContain(narrow.ranking.winner);
      }),
      { numRuns: 60, seed: 20260713 },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(3);
  });

  test('a size of vise that lies in a range recommends nothing that one size in it does not', () => {
    const drawn = fc.sample(anyShop, { seed: 777, numRuns: 9 })[8];
    if (drawn === undefined) throw new Error('no such shop');
    const { answers, catalog } = built(drawn);
    const winnerWith = (width: Uncertain): string | null => {
      const vise = { ...answers.work.vise, width };
      return standingOf({ ...answers, work: { ...answers.work, vise } }, catalog).ranking.winner;
    };
    // a vise wider than 110 mm leaves room for one only, and then the other way round is better
    expect(winnerWith(110)).not.toBe(winnerWith(111));
    expect(winnerWith([109, 112])).toBeNull();
    expect(winnerWith([109, 110])).toBe(winnerWith(110));
  });
});
