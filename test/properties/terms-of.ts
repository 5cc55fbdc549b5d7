import type { Case } from '../../src/rules/judging/case.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import type { Side } from '../../src/rules/judging/side.ts';
import type { Term } from '../../src/rules/judging/term.ts';

/** Every side of a check that counts in this case: needs, haves, and those of its easings. */
export function sidesOf(check: Check, of: Case): readonly Side[] {
  const comparisons = typeof check.comparisons === 'function' ? check.comparisons(of) : check.comparisons;
  return comparisons
    .filter((each) => each.when === undefined || each.when(of))
    .flatMap((each) => [
      each.need,
      each.have,
      ...(each.easings ?? []).flatMap((rule) => [
        ...rule.all.flatMap(({ need, have }) => [need, have]),
        ...(rule.amount === undefined ? [] : [rule.amount]),
      ]),
    ]);
}

export const termsOf = (check: Check, of: Case): readonly Term[] =>
  sidesOf(check, of).flatMap((side) => [...side.terms(of), ...(side.less?.(of) ?? [])]);
