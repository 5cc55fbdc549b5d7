import type { CheckId } from '../../rules/checks/ids.ts';

/** A word of the trade, or of this program. No digits: numbers are worked out. */
export interface Term {
  /** as it stands in a sentence */
  readonly name: string;
  readonly plain: string;
  readonly mistake: string;
  /** the check that shows it at work, with formula, numbers and sketch; else why there is none */
  readonly shownBy: CheckId | { readonly none: string };
  /** other forms in which it occurs in questions */
  readonly also?: readonly string[];
}

/** A word that a check shows at work. */
export const term = (
  name: string,
  shownBy: CheckId,
  plain: string,
  mistake: string,
  also: readonly string[] = [],
): Term => ({ name, plain, mistake, shownBy, also });

/** A word of which there is nothing to work out. */
export const named = (
  name: string,
  none: string,
  plain: string,
  mistake: string,
  also: readonly string[] = [],
): Term => ({ name, plain, mistake, shownBy: { none }, also });

export const ONLY_A_WORD = 'It is a word for a thing; nothing is worked out of it alone.';
