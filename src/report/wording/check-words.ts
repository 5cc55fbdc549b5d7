/** A check in words: what it says, why it is asked, and what its two numbers are. */
export interface CheckWords {
  /** a few words that fit into a sentence */
  readonly name: string;
  readonly title: string;
  /** one sentence that needs no trade school */
  readonly sentence: string;
  readonly need: string;
  readonly have: string;
}

/** One check in words. */
export const check = (
  name: string,
  title: string,
  sentence: string,
  need: string,
  have: string,
): CheckWords => ({
  name,
  title,
  sentence,
  need,
  have,
});
