/**
 * How far one numeric answer may move, everything else unchanged, while the recommendation stays the same.
 * Example: { answer: 'tools.longest', at: 180, low: 150, high: 214, givenUp: [] }.
 */
export interface Stability {
  /** path of an answer */
  readonly answer: string;
  /** what is answered now, in the answer's own unit */
  readonly at: number;
  /** the least value, the answer's own at most; null: none found down to half of it, as far as the question accepts that */
  readonly low: number | null;
  /** the greatest value, the answer's own at least; null: none found up to twice as much, as far as the question accepts that */
  readonly high: number | null;
  /** ends at which the search was given up: it may stay well beyond them */
  readonly givenUp: readonly ('low' | 'high')[];
}
