import type { Case, PartCase, ShopCase } from '../judging/case.ts';
import type { Check, Comparison, EasingRule, Sense } from '../judging/check.ts';
import { atMost } from '../judging/compare.ts';
import { alike } from './alike.ts';
import { type Ends, type FlatSides, flatSides } from './flat-sides.ts';
import { openWithPart } from './open-ground.ts';
import { threeOf } from './verdict-of.ts';

/** Verdicts in three values, case by case, as small numbers. */
const PASSES = 0;
export const NOT_SETTLED = 1;
export const FAILS = 2;

/** What may not pass of a list of cases, case by case; good until the next ground. Throws what is barred. */
export type FlatJudge = (ground: Case) => Uint8Array;

/** A list of cases with what is worked out for all of them at once. */
export interface Flat {
  readonly parts: readonly (PartCase | null)[];
  readonly sides: FlatSides;
  /** whether something is so of each case, once for all grounds that are alike in what it reads of them */
  readonly whether: (is: (of: Case) => boolean) => (ground: Case) => Uint8Array;
}

export const flatOf = (parts: readonly (PartCase | null)[], shop: ShopCase): Flat => ({
  parts,
  sides: flatSides(parts, shop),
  whether: (is) => alike((noted) => Uint8Array.from(parts, (part) => Number(is(noted(part))))),
});

/** Declared once for all cases, and counted without looking at numbers? Others are left to the plain judge. */
export const isFlat = ({ comparisons }: Check): boolean =>
  typeof comparisons !== 'function' && comparisons.every(({ meets }) => meets === undefined);

const FAIL = 4;
const OPEN = 2;
const EASED = 1;

/** Judges a check as the plain judge does, on all cases at once and to three values. */
export function flatJudge(check: Check, flat: Flat): FlatJudge {
  const { parts, sides, whether } = flat;
  const { comparisons } = check;
  if (typeof comparisons === 'function') throw new Error(`${check.id} is declared for each case`);
  const found = new Uint8Array(parts.length);
  const marks = new Uint8Array(parts.length);
  const applies = whether(check.applies);
  const judged = comparisons.map((each) => ({
    counts: each.when === undefined ? null : whether(each.when),
    each: new Uint8Array(parts.length),
    mark: markedBy(check.sense, each, flat),
  }));
  return (ground) => {
    found.fill(PASSES);
    const counted = applies(ground);
    if (!counted.includes(1)) return found;
    marks.fill(0);
    for (const { counts, each, mark } of judged) {
      const also = counts === null ? counted : both(counted, counts(ground), each);
      if (also.includes(1)) mark(marks, also, ground);
    }
    for (let at = 0; at < found.length; at += 1) {
      const mark = marks[at] as number;
      if ((mark & FAIL) !== 0) found[at] = FAILS;
      else if (mark === (OPEN | EASED)) found[at] = plainly(check, ground, parts[at] ?? null);
      else if ((mark & OPEN) !== 0) found[at] = NOT_SETTLED;
    }
    return found;
  };

  function markedBy(sense: Sense, { need, have, easings = [] }: Comparison, of: Flat) {
    const rules = easings.map((rule) => easedBy(sense, rule, of));
    const wanting = new Uint8Array(parts.length);
    const best = new Uint8Array(parts.length);
    return (into: Uint8Array, counted: Uint8Array, ground: Case): void => {
      const [needs, haves] = [sides(need, ground), sides(have, ground)];
      let some = false;
      for (let at = 0; at < parts.length; at += 1) {
        const met = counted[at] === 0 ? SURELY : howMet(sense, needs, haves, at);
        wanting[at] = Number(met !== SURELY);
        best[at] = met;
        some ||= met !== SURELY;
      }
      if (!some) return;
      for (const rule of rules) rule(best, wanting, ground);
      for (let at = 0; at < parts.length; at += 1)
        if (wanting[at] === 1) into[at] = (into[at] as number) | (MARKS[best[at] as number] as number);
    };
  }
}

const NOT = 0;
const PERHAPS = 1;
const SURELY = 2;
const MARKS = [FAIL, OPEN, EASED];

function howMet(sense: Sense, needs: Ends, haves: Ends, at: number): number {
  const [small, large] = sense === 'at-most' ? [needs, haves] : [haves, needs];
  if (atMost(small.high[at] as number, large.low[at] as number)) return SURELY;
  return atMost(small.low[at] as number, large.high[at] as number) ? PERHAPS : NOT;
}

/** Betters what is met of those that are wanting; nothing is looked at that helps nobody. */
function easedBy(sense: Sense, rule: EasingRule, { parts, sides, whether }: Flat) {
  const helps = rule.when === undefined ? null : whether(rule.when);
  const those = new Uint8Array(parts.length);
  return (best: Uint8Array, wanting: Uint8Array, ground: Case): void => {
    const helped = helps === null ? wanting : both(wanting, helps(ground), those);
    if (!helped.some((each, at) => each === 1 && best[at] !== SURELY)) return;
    const all = rule.all.map((each) => ({
      sense: each.sense ?? sense,
      needs: sides(each.need, ground),
      haves: sides(each.have, ground),
    }));
    for (let at = 0; at < parts.length; at += 1) {
      if (helped[at] === 0 || best[at] === SURELY) continue;
      let met = SURELY;
      for (const each of all) met = Math.min(met, howMet(each.sense, each.needs, each.haves, at));
      best[at] = Math.max(best[at] as number, met);
    }
  };
}

/** Puts what is so in both into a list of the same length. */
function both(a: Uint8Array, b: Uint8Array, into: Uint8Array): Uint8Array {
  for (let at = 0; at < into.length; at += 1) into[at] = (a[at] as number) & (b[at] as number);
  return into;
}

/** Whether what is open enters the verdict is for the plain judge to say. */
function plainly(check: Check, ground: Case, part: PartCase | null): number {
  const three = threeOf(check, part === null ? ground : openWithPart(ground, part));
  return three === 'fails' ? FAILS : three === 'passes' ? PASSES : NOT_SETTLED;
}
