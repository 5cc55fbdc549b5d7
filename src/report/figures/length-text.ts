import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { Decision } from '../../rules/decision.ts';

/** How a length at a scale is written: in mm, and in inches beside it where the user wants to read those. */
export const lengthText =
  ({ inputs: { shownIn } }: Pick<Decision, 'inputs'>) =>
  (mm: number): string =>
    formatQuantity(mm, 'mm', { shownIn, beside: true });
