import type { Interval } from '../../quantities/interval.ts';
import type { Uncertain } from '../../questions/answers.ts';
import type { Bounded, Gap } from '../decision.ts';

/** A number of the decision: where it may lie, what it is called, and which unknowns it hangs on. */
export interface Value extends Interval, Hanging {
  /** `parts[Lock gate hinge].depthSide`, `rotaries[wren].swing`, or the name of a derived number */
  readonly path: string;
}

/** What hangs on unknowns: which they are (worked out when asked for), and whether one is only for the seller. */
export interface Hanging {
  readonly gaps: readonly Gap[];
  /** a catalog value is missing without which the rest still means something */
  readonly forSeller: boolean;
  /** something else is not known: an answer, or a catalog value without which nothing can be said */
  readonly forOthers: boolean;
}

const NO_GAPS: readonly Gap[] = [];
const OTHERS = { forSeller: false, forOthers: true } as const;

/** A number that is known. */
export const known = (value: number, path: string): Value => ({
  low: value,
  high: value,
  path,
  gaps: NO_GAPS,
  forSeller: false,
  forOthers: false,
});

/** What the user said; not known: anything in the range that 'not sure' stands for. */
export function answered(answer: Uncertain, path: string, notSure: Interval): Value {
  if (typeof answer === 'number') return known(answer, path);
  const gaps: readonly Gap[] = [{ path, ask: 'user', essential: true }];
  if (answer === 'unknown') return { low: notSure.low, high: notSure.high, path, gaps, ...OTHERS };
  return answer[0] === answer[1]
    ? known(answer[0], path)
    : { low: answer[0], high: answer[1], path, gaps, ...OTHERS };
}

/** What a catalog states; not stated: anything within what is physically possible. */
export function stated(
  value: number | 'unknown',
  path: string,
  possible: Interval,
  essential: boolean,
): Value {
  if (value !== 'unknown') return known(value, path);
  const gaps: readonly Gap[] = [{ path, ask: 'seller', essential }];
  return { low: possible.low, high: possible.high, path, gaps, forSeller: !essential, forOthers: essential };
}

/** A number made of others: its ends, and every unknown that those hang on. */
export function derived(ends: Interval, path: string, from: readonly Hanging[]): Value {
  // one that comes out the same for every value hangs on none
  if (ends.low === ends.high) return known(ends.low, path);
  const hanging = hangingOn(from);
  return {
    low: ends.low,
    high: ends.high,
    path,
    forSeller: hanging.forSeller,
    forOthers: hanging.forOthers,
    get gaps() {
      return hanging.gaps;
    },
  };
}

/** What hangs on all of these: each unknown once, gathered when somebody asks. */
export function hangingOn(from: readonly Hanging[]): Hanging {
  let gaps: readonly Gap[] | null = null;
  return {
    get gaps() {
      gaps ??= distinct(from.flatMap((each) => each.gaps));
      return gaps;
    },
    forSeller: from.some((each) => each.forSeller),
    forOthers: from.some((each) => each.forOthers),
  };
}

function distinct(gaps: readonly Gap[]): readonly Gap[] {
  if (gaps.length < 2) return gaps;
  return [...new Map(gaps.map((gap) => [gap.path, gap])).values()];
}

/** For the decision file: the number where there is one, else its ends, null where nothing bounds them. */
export function bounded({ low, high }: Interval): Bounded {
  if (low === high) return Number.isFinite(low) ? low + 0 : null;
  const ends = [finite(low), finite(high)] as const;
  return ends[0] === null && ends[1] === null ? null : ends;
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value + 0 : null);

/** Something that hangs on one unknown kind of answer. */
export const openAnswer = (path: string): readonly Hanging[] => [
  { gaps: [{ path, ask: 'user', essential: true }], ...OTHERS },
];
