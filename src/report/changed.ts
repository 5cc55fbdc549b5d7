import type { Arrangement, Decision, Drop } from '../rules/decision.ts';

/** So many are told by name; the rest are counted. */
export const MOST_NAMED = 5;

/** An arrangement of which another decision is made. */
interface ArrangementChange {
  readonly id: string;
  /** what drops it now, or dropped it before; null: it is not looked at there */
  readonly by: Drop | null;
}

/** How many pass for certain, and how many may. */
interface Passing {
  readonly passes: number;
  readonly open: number;
}

/** What another decision on the same catalog changes, as data. Both have to list every arrangement. */
export interface Changed {
  readonly passing: { readonly before: Passing; readonly after: Passing };
  /** did not pass, and do now, or may; the best by coverage, then by price, first */
  readonly letThrough: readonly ArrangementChange[];
  /** passed, or might have, and do not now; what was recommended first, then those that passed for certain */
  readonly dropped: readonly ArrangementChange[];
  /** passed for certain, and only may now; and the other way round */
  readonly nowOpen: number;
  readonly nowCertain: number;
  /** how many are let through and dropped besides those that are told by name */
  readonly more: { readonly letThrough: number; readonly dropped: number };
}

/** Example: a smaller budget → { dropped: [{ id: 'rowan+wren/tilt-along-y', by: { stage: 'shop', check: 'budget' } }], … } */
export function changedBetween(before: Decision, after: Decision): Changed {
  const then = new Map(before.arrangements.map((each) => [each.id, each]));
  const now = new Map(after.arrangements.map((each) => [each.id, each]));
  const letThrough = after.arrangements
    .filter((each) => each.passes !== 'no' && (then.get(each.id)?.passes ?? 'no') === 'no')
    .toSorted(better)
    .map(({ id }) => ({ id, by: then.get(id)?.dropped ?? null }));
  const dropped = before.arrangements
    .filter((each) => each.passes !== 'no' && (now.get(each.id)?.passes ?? 'no') === 'no')
    .toSorted(
      (a, b) =>
        Number(b.id === before.recommended) - Number(a.id === before.recommended) ||
        Number(a.passes === 'open') - Number(b.passes === 'open') ||
        better(a, b),
    )
    .map(({ id }) => ({ id, by: now.get(id)?.dropped ?? null }));
  const turned = (from: Arrangement['passes'], to: Arrangement['passes']): number =>
    after.arrangements.filter((each) => each.passes === to && then.get(each.id)?.passes === from).length;
  return {
    passing: { before: passingIn(before), after: passingIn(after) },
    letThrough,
    dropped,
    nowOpen: turned('yes', 'open'),
    nowCertain: turned('open', 'yes'),
    more: {
      letThrough: Math.max(0, letThrough.length - MOST_NAMED),
      dropped: Math.max(0, dropped.length - MOST_NAMED),
    },
  };
}

const passingIn = ({ arrangements }: Decision): Passing => ({
  passes: arrangements.filter(({ passes }) => passes === 'yes').length,
  open: arrangements.filter(({ passes }) => passes === 'open').length,
});

/** What is likelier to be read about: more of the work held, then less to pay. */
const better = (a: Arrangement, b: Arrangement): number =>
  least(b.measures.coverage) - least(a.measures.coverage) ||
  least(a.measures.price) - least(b.measures.price);

const least = (value: Arrangement['measures']['price']): number =>
  (typeof value === 'number' ? value : value?.[0]) ?? 0;
