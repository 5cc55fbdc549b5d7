/** A load on two legs that do not hang alike: where they pick it up beside the hook, and how high the hook is. */
export interface UnequalLegs {
  readonly load: number;
  /** level distances of the two picks from below the hook, any unit of length */
  readonly first: number;
  readonly second: number;
  /** of the hook above the picks, the same unit */
  readonly height: number;
}

/**
 * Pull on each of two unequal legs of a sling, in the unit of the load.
 *
 * Formula: T1 = W·D2·S1/(H·(D1 + D2)), T2 = W·D1·S2/(H·(D1 + D2)), S = √(D² + H²)
 * Symbols: W load; D1, D2 picks beside the hook; H hook above the picks; S1, S2 lengths of the legs
 * Valid: W ≥ 0, D1 ≥ 0, D2 ≥ 0, D1 + D2 > 0, H > 0
 * Source: statics; reprinted in rigging sheets
 * Example: unequalSlingLegs({ load: 1000, first: 3, second: 3, height: 4 }) → [625, 625]
 */
export function unequalSlingLegs({ load, first, second, height }: UnequalLegs): readonly [number, number] {
  if (!(load >= 0 && first >= 0 && second >= 0 && first + second > 0 && height > 0))
    throw new RangeError(`No such sling: picks ${first} and ${second} under a hook ${height} above them.`);
  const share = load / (height * (first + second));
  return [share * second * Math.hypot(first, height), share * first * Math.hypot(second, height)];
}
