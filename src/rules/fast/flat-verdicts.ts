import type { Family } from '../arranging/family.ts';
import { oriented } from '../arranging/oriented.ts';
import type { AtOnce } from '../arranging/setting.ts';
import type { Verdict } from '../decision.ts';
import type { Case, ShopCase } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { worse } from '../judging/outcome.ts';
import { FAILS, type FlatJudge, flatJudge, isFlat, NOT_SETTLED } from './flat-judge.ts';
import { casesFor, flatsOf } from './flats.ts';

/** What checks say of a family on a ground: it surely fails, or the worst of the rest and what has to be looked at by itself. */
interface OfFamily {
  fails: boolean;
  verdict: Verdict;
  readonly byItself: Check[];
}

/**
 * Judges all families of a mix on a ground as soon as one of them is asked for, in flat numbers. What is open may be the
 * seller's to say alone, so it is judged by itself; so is a check that is made for each case.
 */
export function flatVerdicts(families: readonly Family[], shop: ShopCase): AtOnce {
  const flats = flatsOf(families, shop);
  const places = new Map(families.map((family, at) => [family, at]));
  const judges = new Map<Check, FlatJudge | null>();
  const judgeOf = (check: Check): FlatJudge | null => {
    const known = judges.get(check);
    if (known !== undefined) return known;
    const made = isFlat(check) ? flatJudge(check, casesFor(check, flats)) : null;
    judges.set(check, made);
    return made;
  };
  const judgedOn = (ground: Case, checks: readonly Check[]): readonly OfFamily[] => {
    const all = families.map((): OfFamily => ({ fails: false, verdict: 'holds', byItself: [] }));
    for (const check of checks) {
      const found = judgeOf(check)?.(ground) ?? null;
      flats.kindsOf.forEach((kinds, at) => {
        const each = all[at] as OfFamily;
        if (found === null || kinds.some((kind) => found[kind] === NOT_SETTLED)) each.byItself.push(check);
        else if (kinds.every((kind) => found[kind] === FAILS)) each.fails = true;
        else if (kinds.some((kind) => found[kind] === FAILS)) each.verdict = 'open';
      });
    }
    return all;
  };
  const kept = new WeakMap<Case, Map<readonly Check[], readonly OfFamily[]>>();
  const allOn = (ground: Case, way: Case, checks: readonly Check[]): readonly OfFamily[] => {
    const known = kept.get(ground) ?? new Map<readonly Check[], readonly OfFamily[]>();
    kept.set(ground, known);
    const made = known.get(checks) ?? judgedOn(way, checks);
    known.set(checks, made);
    return made;
  };
  return (ground, family, checks, byItself) => {
    const place = places.get(family);
    // a built-in table of which it is not said how it lies: one way it is judged as it lies, several are not judged here
    const [way, ...others] = oriented(ground);
    if (place === undefined || way === undefined || others.length > 0) return null;
    const found = allOn(ground, way, checks)[place] as OfFamily;
    let worst: Verdict = found.fails ? 'fails' : found.verdict;
    for (const check of found.byItself) {
      if (worst === 'fails') return worst;
      worst = worse(worst, byItself(check));
    }
    return worst;
  };
}
