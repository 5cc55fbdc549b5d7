import type { Measure } from '../../questions/answers.ts';
import type { World } from '../arranging/setting.ts';
import type { Gap } from '../decision.ts';
import type { Judged } from './judged.ts';

/** A measure of an arrangement that is not known to the end. */
interface OpenMeasure {
  readonly measure: Measure;
  /** what it hangs on */
  readonly gaps: readonly Gap[];
}

/**
 * What an arrangement is held against others by and is not known, with what that hangs on. Payback only where somebody
 * named a rate: without, it is held against nothing.
 * Example: the quantity of a part is open, and whether the part is held too → coverage, and payback where there is a rate.
 */
export function openMeasures(
  { families, coverage, priced, swaps, measures, worth }: Judged,
  { shop }: World,
): readonly OpenMeasure[] {
  const { swapMinutes, money, viseWidth, viseLength } = shop;
  const found: OpenMeasure[] = [];
  const note = (measure: Measure, of: { low: number; high: number } | null, gaps: readonly Gap[]): void => {
    if (of !== null && of.low !== of.high) found.push({ measure, gaps });
  };
  note(
    'coverage',
    coverage,
    families.flatMap(({ family }) => family.hours.gaps),
  );
  note('price', priced.total, priced.total.gaps);
  note('swapHours', measures.swapHours, [...swaps.gaps, ...swapMinutes.gaps]);
  note('viseStations', measures.viseStations, [...viseWidth.gaps, ...viseLength.gaps]);
  if (money.hasRate) note('payback', worth.payback, worth.payback.gaps);
  return found;
}
