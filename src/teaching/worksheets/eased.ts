import type { MeasureToTake } from '../../rules/decision.ts';
import { compare } from '../../rules/judging/compare.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { evaluateSide } from '../../rules/judging/side.ts';

/** The measures with which a check would hold where it falls short, and whether one alone could help it at all. */
export function enoughIn({ check, comparison, of }: Outcome): {
  readonly any: boolean;
  readonly enough: readonly MeasureToTake[];
} {
  const usable = (comparison?.easings ?? []).filter(({ when }) => when === undefined || when(of));
  const enough = usable.filter(({ all }) =>
    all.every(
      ({ need, have, sense }) =>
        compare(sense ?? check.sense, evaluateSide(need, of), evaluateSide(have, of)).surely,
    ),
  );
  return { any: usable.length > 0, enough: [...new Set(enough.map(({ measure }) => measure))] };
}
