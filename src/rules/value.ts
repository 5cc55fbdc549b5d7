import type { Interval } from '../quantities/interval.ts';
import type { Uncertain } from '../questions/answers.ts';
import type { Bounded, Gap } from './decision.ts';

/** A number of the decision: where it may lie, what it is called, and which unknowns it hangs on. */
export interface Value extends Interval {
  /** `parts[Lock gate hinge].depthSide`, `rotaries[wren].swing`, or the name of a derived number */
  readonly path: string;
  readonly gaps: readonly Gap[];
}

const NO_GAPS: readonly Gap[] = [];

/** A number that is known. */
export const known = (value: number, path: string): Value => ({
  low: value,
  high: value,
  path,
  gaps: NO_GAPS,
});

/** What the user said; not known: anything in the range that 'not sure' stands for. */
export function answered(answer: Uncertain, path: string, notSure: Interval): Value {
  if (typeof answer === 'number') return known(answer, path);
  const gaps: readonly Gap[] = [{ path, ask: 'user', essential: true }];
  if (answer === 'unknown') return { low: notSure.low, high: notSure.high, path, gaps };
  return answer[0] === answer[1] ? known(answer[0], path) : { low: answer[0], high: answer[1], path, gaps };
}

/** What a catalog states; not stated: anything within what is physically possible. */
export function stated(
  value: number | 'unknown',
  path: string,
  possible: Interval,
  essential: boolean,
): Value {
  if (value !== 'unknown') return known(value, path);
  return {
    low: possible.low,
    high: possible.high,
    path,
    gaps: [{ path, ask: 'seller', essential }],
  };
}

/** A number made of others: its ends, and every unknown that those hang on. */
export function derived(
  ends: Interval,
  path: string,
  from: readonly { readonly gaps: readonly Gap[] }[],
): Value {
  return { low: ends.low, high: ends.high, path, gaps: gapsOf(from) };
}

/** Every unknown of these values, each once. */
export function gapsOf(values: readonly { readonly gaps: readonly Gap[] }[]): readonly Gap[] {
  const found = values.flatMap((value) => value.gaps);
  if (found.length < 2) return found;
  return [...new Map(found.map((gap) => [gap.path, gap])).values()];
}

/** For the decision file: the number where there is one, else its ends, null where nothing bounds them. */
export function bounded({ low, high }: Interval): Bounded {
  if (low === high) return Number.isFinite(low) ? low + 0 : null;
  const ends = [finite(low), finite(high)] as const;
  return ends[0] === null && ends[1] === null ? null : ends;
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value + 0 : null);

/** Something that hangs on one unknown kind of answer. */
export const openAnswer = (path: string): readonly { readonly gaps: readonly Gap[] }[] => [
  { gaps: [{ path, ask: 'user', essential: true }] },
];
