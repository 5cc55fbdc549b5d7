import type { Part } from '../../questions/answers.ts';
import { hoursNow } from '../facts/hours.ts';
import { isFiveAxis, partCases } from '../facts/part-facts.ts';
import type { PartCase, ShopCase } from '../judging/case.ts';
import type { Value } from '../judging/value.ts';
import { type WorkOnRotary, workOnRotary } from '../money/work-on-rotary.ts';

/** One family of the parts mix as the engine carries it: its kinds, and the hours that it weighs. */
export interface Family {
  readonly name: string;
  /** as kept work counts it */
  readonly slot: number;
  readonly must: boolean;
  readonly hours: Value;
  readonly onRotary: WorkOnRotary;
  readonly cases: readonly PartCase[];
}

/** The families that are five-axis work; the others are named, and judged on no rotary. */
export function familiesOf(
  parts: readonly Part[],
  shop: ShopCase,
  casesOf: (part: Part) => readonly PartCase[] = (part) => partCases(part, shop),
): { readonly fiveAxis: readonly Family[]; readonly threeAxis: readonly Family[] } {
  const all = parts.map((part) => {
    const cases = isFiveAxis(part) ? casesOf(part) : [];
    const [first] = cases;
    return {
      part,
      family: {
        name: part.name,
        slot: first?.slot ?? 0,
        must: part.must,
        ...yearlyOf(part),
        cases,
      },
    };
  });
  return {
    fiveAxis: all.filter(({ part }) => isFiveAxis(part)).map(({ family }) => family),
    threeAxis: all.filter(({ part }) => !isFiveAxis(part)).map(({ family }) => family),
  };
}

/** Answers never change where they stand: what hangs on a part alone is worked out once for it. */
const yearly = new WeakMap<Part, Pick<Family, 'hours' | 'onRotary'>>();

function yearlyOf(part: Part): Pick<Family, 'hours' | 'onRotary'> {
  const known = yearly.get(part) ?? { hours: hoursNow(part), onRotary: workOnRotary(part) };
  yearly.set(part, known);
  return known;
}
