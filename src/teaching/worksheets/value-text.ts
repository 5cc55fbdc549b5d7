import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import { writeNumber } from '../formula/write-formula.ts';

/**
 * A given number as it is typed into a calculator: in the unit that the formulas take, with six digits; in inches, where those
 * are asked for, in brackets behind it. Example: (88.9, 'mm', 'inch') → '88.9 mm (3.5 in)'.
 */
export function givenText(value: number, unit: string, units: LengthUnits, currency: string): string {
  const number = writeNumber(value);
  if (unit === '' || unit === 'share') return number;
  if (unit === '°') return `${number}°`;
  const metric = `${number} ${unit === 'money' ? currency : unit}`.trim();
  if (units === 'mm') return metric;
  const [mm, inch] = (['mm', 'inch'] as const).map((shownIn) => formatQuantity(value, unit, { shownIn }));
  return mm === inch ? metric : `${metric} (${inch})`;
}

/** A unit as it stands behind a place for an answer. Example: unitText('money', 'EUR') → 'EUR'. */
export const unitText = (unit: string, currency: string): string => (unit === 'money' ? currency : unit);
