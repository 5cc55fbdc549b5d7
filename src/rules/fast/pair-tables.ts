import type { Interval } from '../../quantities/interval.ts';
import type { Case, PartCase } from '../judging/case.ts';
import type { Check, Comparison, EasingRule, Sense } from '../judging/check.ts';
import { evaluateSide, type Side } from '../judging/side.ts';
import { barred, unlessBarred } from './barred.ts';
import { addTo, type FamilyBits } from './family-bits.ts';
import type { Grounds } from './half-tables.ts';
import { openWithPart } from './open-ground.ts';
import { type Ranked, type Ranks, ranksOf } from './ranks.ts';

/** One need against one have: the needs on a stand ranked, the have looked up. */
export interface Against {
  readonly ranks: Ranks;
  /** index into the haves of all pair checks */
  readonly have: number;
}

/** A comparison of one layer on one stand, with what eases it: an easing helps those families only where it applies. */
interface PairComparison {
  readonly plain: Against;
  readonly easings: readonly { readonly helps: Uint32Array; readonly all: readonly Against[] }[];
}

/** Each family as one of the things that it may be, standing one way round. A family fails where it does so in every layer. */
export type Layer = readonly PairComparison[];

/** A check whose need hangs on part and stand, and its have on the machine (and the stand). */
export interface PairCheck {
  readonly check: Check;
  /** all of its comparisons are here, so that what does not fail and is surely met passes */
  readonly whole: boolean;
  /** its haves take the machine alone */
  readonly ofMachine: boolean;
  readonly layers: readonly (readonly Layer[])[];
}

/** Sides that are looked up, each once. */
export interface Haves {
  readonly sides: Side[];
}

/** The ranked checks, filled stand after stand. */
export interface PairsInWork {
  readonly fill: (grounds: Grounds, stand: number, isMade: (check: Check) => boolean) => void;
  readonly pairs: () => readonly PairCheck[];
}

/**
 * The checks whose needs read nothing of the machine, and whose haves read nothing of the part or of the place; of a check the
 * comparisons of which this is so. Which those are is known once the first stand was tried.
 */
export function pairsInWork(checks: readonly Check[], bits: FamilyBits, haves: Haves): PairsInWork {
  const work = new Map<Check, Map<Comparison, (readonly PairComparison[])[]>>();
  for (const check of checks) {
    const { comparisons } = check;
    if (check.about !== 'part' || typeof comparisons === 'function' || check.advisory !== undefined) continue;
    const usable = comparisons.filter(
      (each) => each.meets === undefined && sidesOf(each).every(({ have }) => isLookedUp(have)),
    );
    work.set(check, new Map(usable.map((each) => [each, []])));
  }
  return {
    fill: (grounds, _, isMade) => {
      for (const [check, ranked] of work) {
        if (isMade(check)) continue;
        for (const [comparison, stands] of ranked) {
          const layers = unlessBarred(() => layersOn(check, comparison, grounds, bits, haves));
          if (layers === null) ranked.delete(comparison);
          else stands.push(layers);
        }
        if (ranked.size === 0) work.delete(check);
      }
    },
    pairs: () => [...work].map(([check, ranked]) => pairOf(check, ranked)),
  };
}

function pairOf(
  check: Check,
  ranked: ReadonlyMap<Comparison, readonly (readonly PairComparison[])[]>,
): PairCheck {
  const made = [...ranked.values()];
  const stands = made[0]?.length ?? 0;
  const depth = Math.max(0, ...made.map(([first]) => first?.length ?? 0));
  return {
    check,
    whole: typeof check.comparisons !== 'function' && made.length === check.comparisons.length,
    ofMachine: [...ranked.keys()].every((comparison) =>
      sidesOf(comparison).every(({ have }) => isOfMachine(have)),
    ),
    layers: Array.from({ length: stands }, (_, stand) =>
      Array.from({ length: depth }, (__, layer) =>
        made.flatMap((each) => {
          const on = each[stand] ?? [];
          // a comparison that does not ask which way round has half as many layers: they come round again
          const found = on[layer % Math.max(1, on.length)];
          return found === undefined ? [] : [found];
        }),
      ),
    ),
  };
}

/** Takes a have the machine alone? */
export const isOfMachine = ({ of }: Side): boolean => of?.every((room) => room === 'machine') === true;

const sidesOf = ({ need, have, easings }: Comparison): readonly { need: Side; have: Side }[] => [
  { need, have },
  ...(easings ?? []).flatMap(({ all }) => all),
];

const ANY_PART: PartCase = barred<PartCase>({ slot: 0, key: 'any' });

/** A have of a part, or of the place, cannot be looked up for all parts at once. */
const isLookedUp = ({ of }: Side): boolean =>
  of !== null && !of.some((room) => room === 'part' || room === 'place' || room === 'turn');

/** What a have comes to on a machine with a stand. */
export const haveOn = (side: Side, ground: Case): Interval =>
  evaluateSide(side, openWithPart(ground, ANY_PART));

/** Throws what is barred where a need reads the machine. */
function layersOn(
  check: Check,
  comparison: Comparison,
  { anyWay, ways }: Grounds,
  bits: FamilyBits,
  haves: Haves,
): readonly PairComparison[] {
  const anyWayRound = unlessBarred(() => layersIn(check, comparison, [anyWay], bits, haves));
  return anyWayRound ?? layersIn(check, comparison, ways, bits, haves);
}

function layersIn(
  check: Check,
  comparison: Comparison,
  ways: readonly Case[],
  { families, words }: FamilyBits,
  haves: Haves,
): readonly PairComparison[] {
  const kinds = Math.max(1, ...families.map(({ cases }) => cases.length));
  return ways.flatMap((ground) =>
    Array.from({ length: kinds }, (_, kind): PairComparison => {
      const cases = families.map(({ cases }) => openWithPart(ground, (cases[kind] ?? cases[0]) as PartCase));
      const counts = (of: Case): boolean =>
        check.applies(of) && (comparison.when === undefined || comparison.when(of));
      const counted = cases.flatMap((of, family) => (counts(of) ? [{ of, family }] : []));
      const against = (sense: Sense, need: Side, have: Side): Against => ({
        ranks: ranksOf(
          sense,
          counted.map(({ of, family }): Ranked => ({ family, need: evaluateSide(need, of) })),
          words,
        ),
        have: indexOf(haves, have),
      });
      return {
        plain: against(check.sense, comparison.need, comparison.have),
        easings: (comparison.easings ?? []).map((rule) => ({
          helps: helpedBy(rule, counted, words),
          all: rule.all.map(({ need, have, sense }) => against(sense ?? check.sense, need, have)),
        })),
      };
    }),
  );
}

function helpedBy(
  { when }: EasingRule,
  counted: readonly { readonly of: Case; readonly family: number }[],
  words: number,
): Uint32Array {
  const set = new Uint32Array(words);
  for (const { of, family } of counted) if (when === undefined || when(of)) addTo(set, 0, family);
  return set;
}

function indexOf({ sides }: Haves, side: Side): number {
  const known = sides.indexOf(side);
  if (known >= 0) return known;
  sides.push(side);
  return sides.length - 1;
}
