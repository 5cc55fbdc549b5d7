import type { QuantityKind } from './kinds.ts';

/** What a number has to keep to, in the base unit of its kind. */
export interface Limits {
  readonly least?: number;
  readonly most?: number;
  /** greater than this, not equal */
  readonly above?: number;
  /** less than this, not equal */
  readonly below?: number;
  /** only whole numbers make sense */
  readonly whole?: boolean;
}

/** Why a text is no quantity, as data; describe-fault.ts puts it into words. */
export type QuantityFault =
  | { readonly code: 'empty'; readonly kind: QuantityKind }
  | { readonly code: 'not-a-number'; readonly kind: QuantityKind; readonly text: string }
  | { readonly code: 'not-finite'; readonly text: string }
  | { readonly code: 'division-by-zero'; readonly text: string }
  /** the text can be read in two ways; `readings` are both, as they can be written without doubt */
  | { readonly code: 'ambiguous'; readonly text: string; readonly readings: readonly [string, string] }
  | { readonly code: 'unknown-unit'; readonly kind: QuantityKind; readonly unit: string }
  | { readonly code: 'outside'; readonly kind: QuantityKind; readonly value: number; readonly limits: Limits }
  | { readonly code: 'not-whole'; readonly value: number }
  | { readonly code: 'wrong-way-round'; readonly low: string; readonly high: string };

/** What is wrong with a value for these limits; null where nothing is. */
export function outsideLimits(value: number, kind: QuantityKind, limits: Limits): QuantityFault | null {
  const { least, most, above, below, whole } = limits;
  const inside =
    (least === undefined || value >= least) &&
    (most === undefined || value <= most) &&
    (above === undefined || value > above) &&
    (below === undefined || value < below);
  if (!inside) return { code: 'outside', kind, value, limits };
  if (whole === true && !Number.isInteger(value)) return { code: 'not-whole', value };
  return null;
}
