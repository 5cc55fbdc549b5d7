import type { Interval } from '../../quantities/interval.ts';
import type { Case, PartCase, ShopCase } from '../judging/case.ts';
import type { Side } from '../judging/side.ts';
import { type Input, type Term, termEnds, type Use } from '../judging/term.ts';
import { alike, type NotedCase } from './alike.ts';
import { barred, unlessBarred } from './barred.ts';
import { openWithPart } from './open-ground.ts';

/** The ends of a side on each case of a list of parts; good until they are asked for on another ground. */
export interface Ends {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** another number whenever they were worked out anew */
  made: number;
}

/** Works a side out on a ground for all cases at once. Throws what is barred where that is read. */
export type FlatSides = (side: Side, ground: Case) => Ends;

/** A number that changes with the ground: of the ground alone, or (`each`) of the case too, or what a side comes to. */
interface Source {
  readonly input: Input;
  readonly side: Side | null;
  each: boolean;
  ends: Ends;
  made: number;
}

/** One term of one case. What its part says stands in `numbers` (and `values`), the rest is put there on each ground. */
interface Plan {
  readonly term: Term;
  readonly at: number;
  readonly numbers: Record<string, number>;
  readonly values: Record<string, Interval>;
  readonly isOpen: boolean;
  readonly moving: readonly { readonly key: string; readonly source: Source }[];
}

/** A side laid out for all grounds that are alike in what makes its terms. */
interface Layout {
  readonly terms: readonly Plan[];
  readonly less: readonly Plan[] | null;
  readonly sources: readonly Source[];
  readonly ends: Ends;
}

/** For these cases of parts; [null]: of the arrangement itself. */
export function flatSides(parts: readonly (PartCase | null)[], shop: ShopCase): FlatSides {
  const count = parts.length;
  const ofNone = parts.every((part) => part === null);
  const alone = parts.map((part) => caseOfPart(part, shop));
  const layouts = new Map<Side, (ground: Case) => Layout>();
  const [upper, lower] = [emptyEnds(count), emptyEnds(count)];

  const sourced = (input: Input, of: Case, sources: Map<Input | Side, Source>): Source => {
    const side = input.side?.(of) ?? null;
    const known = sources.get(side ?? input);
    if (known !== undefined) return known;
    const made: Source = { input, side, each: false, ends: emptyEnds(1), made: -1 };
    sources.set(side ?? input, made);
    return made;
  };

  const planned = (term: Term, at: number, of: Case, sources: Map<Input | Side, Source>): Plan => {
    const numbers: Record<string, number> = {};
    const values: Record<string, Interval> = {};
    const moving: { key: string; source: Source }[] = [];
    let isOpen = false;
    for (const key in term.uses) {
      const { input } = term.uses[key] as Use;
      const own = unlessBarred(() => input.read(alone[at] as Case));
      numbers[key] = own?.low ?? 0;
      values[key] = own ?? NOTHING;
      if (own === null) moving.push({ key, source: sourced(input, of, sources) });
      else if (own.low !== own.high) isOpen = true;
    }
    return { term, at, numbers, values, isOpen, moving };
  };

  const laidOut = (side: Side, noted: NotedCase): Layout => {
    const sources = new Map<Input | Side, Source>();
    const plans = (terms: Side['terms']): readonly Plan[] =>
      parts.flatMap((part, at) => {
        const of = noted(part);
        return terms(of).map((each) => planned(each, at, of, sources));
      });
    const terms = plans(side.terms);
    const less = side.fold === 'width' ? plans(side.less ?? (() => [])) : null;
    return { terms, less, sources: [...sources.values()], ends: emptyEnds(count) };
  };

  /** Is it another number than on the ground before? */
  const isMoved = (source: Source, ground: Case): boolean => {
    const { input, side } = source;
    if (side !== null) {
      const found = flat(side, ground);
      const moved = source.made !== found.made || source.ends !== found;
      source.ends = found;
      source.each = true;
      source.made = found.made;
      return moved;
    }
    if (!source.each) {
      const anyPart = ofNone ? null : ANY_PART;
      const found = unlessBarred(() => input.read(onGround(ground, anyPart)));
      if (found !== null) return putEnd(source.ends, 0, found) || firstTime(source);
    }
    const found = parts.map((part) => input.read(onGround(ground, part)));
    if (!source.each) source.ends = emptyEnds(count);
    source.each = true;
    found.forEach((each, at) => {
      putEnd(source.ends, at, each);
    });
    return true;
  };

  const flat: FlatSides = (side, ground) => {
    let layoutOn = layouts.get(side);
    if (layoutOn === undefined) {
      layoutOn = alike((noted) => laidOut(side, noted));
      layouts.set(side, layoutOn);
    }
    const { terms, less, sources, ends } = layoutOn(ground);
    let moved = ends.made < 0;
    for (const source of sources) if (isMoved(source, ground)) moved = true;
    if (!moved) return ends;
    ends.made += 1;
    if (less === null) {
      fold(terms, side.fold === 'least', ends);
      return ends;
    }
    fold(terms, false, upper);
    fold(less, true, lower);
    for (let at = 0; at < count; at += 1) {
      ends.low[at] = (upper.low[at] as number) - (lower.high[at] as number);
      ends.high[at] = (upper.high[at] as number) - (lower.low[at] as number);
    }
    return ends;
  };
  return flat;
}

/** The greatest or least over the terms of each case: each end is that of the ends. */
function fold(plans: readonly Plan[], isLeast: boolean, into: Ends): void {
  const start = isLeast ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  const pick = isLeast ? Math.min : Math.max;
  into.low.fill(start);
  into.high.fill(start);
  for (const plan of plans) {
    const { at } = plan;
    let exact = !plan.isOpen;
    for (const { key, source } of plan.moving) {
      const from = source.each ? at : 0;
      const low = source.ends.low[from] as number;
      plan.numbers[key] = low;
      if (low !== source.ends.high[from]) exact = false;
    }
    if (exact) {
      const only = plan.term.formula(plan.numbers);
      const isNumber = !Number.isNaN(only);
      into.low[at] = pick(into.low[at] as number, isNumber ? only : Number.NEGATIVE_INFINITY);
      into.high[at] = pick(into.high[at] as number, isNumber ? only : Number.POSITIVE_INFINITY);
      continue;
    }
    for (const { key, source } of plan.moving) {
      const from = source.each ? at : 0;
      plan.values[key] = { low: source.ends.low[from] as number, high: source.ends.high[from] as number };
    }
    const { low, high } = termEnds(plan.term, plan.values);
    into.low[at] = pick(into.low[at] as number, low);
    into.high[at] = pick(into.high[at] as number, high);
  }
}

const NOTHING: Interval = { low: 0, high: 0 };

/** Any part: none of it may be read. */
export const ANY_PART: PartCase = barred<PartCase>({ slot: 0, key: 'any' });

const onGround = (ground: Case, part: PartCase | null): Case =>
  part === null ? ground : openWithPart(ground, part);

const emptyEnds = (count: number): Ends => ({
  low: new Float64Array(count),
  high: new Float64Array(count),
  made: -1,
});

function putEnd(ends: Ends, at: number, { low, high }: Interval): boolean {
  const moved = ends.low[at] !== low || ends.high[at] !== high;
  ends.low[at] = low;
  ends.high[at] = high;
  return moved;
}

function firstTime(source: Source): boolean {
  const first = source.made < 0;
  source.made = 0;
  return first;
}

/** A part with nothing around it but the shop. */
function caseOfPart(part: PartCase | null, shop: ShopCase): Case {
  return barred<Case>({ part, shop, orientation: [] });
}
