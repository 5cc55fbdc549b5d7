/**
 * How far one numeric answer may move, everything else unchanged, while the recommendation surely stays the same.
 * Example: { answer: 'tools.longest', at: 180, low: 150, high: 214 }.
 */
export interface Stability {
  /** path of an answer */
  readonly answer: string;
  /** what is answered now, in the answer's own unit */
  readonly at: number;
  /** the least value, the answer's own at most; null: no end within what the question accepts */
  readonly low: number | null;
  /** the greatest value, the answer's own at least; null: no end within what the question accepts */
  readonly high: number | null;
}
