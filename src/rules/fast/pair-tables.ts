import type { Case } from '../judging/case.ts';
import type { Check, Comparison, Sense } from '../judging/check.ts';
import type { Side } from '../judging/side.ts';
import { unlessBarred } from './barred.ts';
import { addTo, type FamilyBits } from './family-bits.ts';
import type { Flats } from './flats.ts';
import type { Grounds } from './half-tables.ts';
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
  readonly fill: (grounds: Grounds, stand: number, among: readonly Check[]) => void;
  readonly pairs: () => readonly PairCheck[];
}

/** Of a comparison, its layers on each stand that was looked at. */
interface InWork {
  readonly declared: Declared;
  readonly stands: (readonly PairComparison[])[];
}

/**
 * The checks whose needs read nothing of the machine, and whose haves read nothing of the part or of the place; of a check the
 * comparisons of which this is so. Which those are is known once the first stand was tried.
 */
export function pairsInWork(
  checks: readonly Check[],
  flats: Flats,
  bits: FamilyBits,
  haves: Haves,
): PairsInWork {
  const work = new Map<Check, Map<Comparison, InWork>>();
  for (const check of checks) {
    const { comparisons } = check;
    if (check.about !== 'part' || typeof comparisons === 'function' || check.advisory !== undefined) continue;
    const usable = comparisons.filter(
      (each) => each.meets === undefined && sidesOf(each).every(({ have }) => isLookedUp(have)),
    );
    work.set(
      check,
      new Map(
        usable.map((each) => [each, { declared: declaredBy(check, each, flats, bits, haves), stands: [] }]),
      ),
    );
  }
  return {
    fill: (grounds, stand, among) => {
      for (const check of among) {
        const ranked = work.get(check);
        if (ranked === undefined) continue;
        for (const [comparison, { declared, stands }] of ranked) {
          const layers = unlessBarred(() => layersOn(declared, grounds));
          if (layers === null) ranked.delete(comparison);
          else stands[stand] = layers;
        }
        if (ranked.size === 0) work.delete(check);
      }
    },
    pairs: () => [...work].map(([check, ranked]) => pairOf(check, ranked)),
  };
}

function pairOf(check: Check, ranked: ReadonlyMap<Comparison, InWork>): PairCheck {
  const made = [...ranked.values()].map(({ stands }) => stands);
  return {
    check,
    whole: typeof check.comparisons !== 'function' && made.length === check.comparisons.length,
    ofMachine: [...ranked.keys()].every((comparison) =>
      sidesOf(comparison).every(({ have }) => isOfMachine(have)),
    ),
    layers: Array.from({ length: Math.max(0, ...made.map(({ length }) => length)) }, (_, stand) => {
      const there = made.map((each) => each[stand] ?? []);
      return Array.from({ length: Math.max(...there.map(({ length }) => length)) }, (__, layer) =>
        // a comparison that does not ask which way round has half as many layers: they come round again
        there.flatMap((on) => on[layer % Math.max(1, on.length)] ?? []),
      );
    }),
  };
}

/** Takes a have the machine alone? */
export const isOfMachine = ({ of }: Side): boolean => of?.every((room) => room === 'machine') === true;

const sidesOf = ({ need, have, easings }: Comparison): readonly { need: Side; have: Side }[] => [
  { need, have },
  ...(easings ?? []).flatMap(({ all }) => all),
];

/** A have of a part, or of the place, cannot be looked up for all parts at once. */
const isLookedUp = ({ of }: Side): boolean =>
  of !== null && !of.some((room) => room === 'part' || room === 'place' || room === 'turn');

/** Throws what is barred where a need reads the machine. */
function layersOn(declared: Declared, { anyWay, ways }: Grounds): readonly PairComparison[] {
  const anyWayRound = declared.asksWay ? null : unlessBarred(() => declared.layersIn([anyWay]));
  if (anyWayRound !== null) return anyWayRound;
  declared.asksWay = true;
  return declared.layersIn(ways);
}

/** A comparison with what says whether it counts, and where easings help. */
function declaredBy(
  check: Check,
  { need, have, when, easings = [] }: Comparison,
  flats: Flats,
  { words }: FamilyBits,
  haves: Haves,
): Declared {
  const { sides, whether } = flats.ofParts;
  const depth = Math.max(1, ...flats.kindsOf.map(({ length }) => length));
  const applies = whether(check.applies);
  const counts = when === undefined ? null : whether(when);
  const rules = easings.map((rule) => ({
    all: rule.all,
    helps: rule.when === undefined ? null : whether(rule.when),
  }));
  const layerOn = (ground: Case, kind: number): PairComparison => {
    const [applied, counted] = [applies(ground), counts?.(ground)];
    const cases = flats.kindsOf.flatMap((kinds, family) => {
      const at = kinds[kind] ?? (kinds[0] as number);
      return applied[at] === 1 && counted?.[at] !== 0 ? [{ at, family }] : [];
    });
    const against = (sense: Sense, needed: Side, there: Side): Against => {
      const ends = cases.length === 0 ? null : sides(needed, ground);
      const ranked = cases.map(
        ({ at, family }): Ranked => ({
          family,
          need: { low: ends?.low[at] as number, high: ends?.high[at] as number },
        }),
      );
      return { ranks: ranksOf(sense, ranked, words), have: indexOf(haves, there) };
    };
    return {
      plain: against(check.sense, need, have),
      easings: rules.map(({ all, helps }) => ({
        helps: setOf(cases, helps?.(ground), words),
        all: all.map((each) => against(each.sense ?? check.sense, each.need, each.have)),
      })),
    };
  };
  return {
    asksWay: false,
    layersIn: (grounds) =>
      grounds.flatMap((ground) => Array.from({ length: depth }, (_, kind) => layerOn(ground, kind))),
  };
}

interface Declared {
  /** which way round it stands was asked somewhere */
  asksWay: boolean;
  readonly layersIn: (grounds: readonly Case[]) => readonly PairComparison[];
}

function setOf(
  cases: readonly { readonly at: number; readonly family: number }[],
  is: Uint8Array | undefined,
  words: number,
): Uint32Array {
  const set = new Uint32Array(words);
  for (const { at, family } of cases) if (is?.[at] !== 0) addTo(set, 0, family);
  return set;
}

function indexOf({ sides }: Haves, side: Side): number {
  const known = sides.indexOf(side);
  if (known >= 0) return known;
  sides.push(side);
  return sides.length - 1;
}
