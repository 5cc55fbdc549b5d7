/** Share of the sum of what each may lift alone, by how many lift. */
const SHARES: readonly number[] = [1, 2 / 3, 1 / 2];

/**
 * What several people may lift together, kg: each extra pair of hands adds less than its own limit.
 *
 * Formula: limit·n·s, s = 1 for one, 2/3 for two, 1/2 for three; more than three count as three
 * Symbols: limit of one, kg; n people
 * Valid: limit ≥ 0, n ≥ 1
 * Source: common guidance on lifting in teams; from memory, not verified
 * Example: teamLiftLimit(12, 2) → 16
 * Example: teamLiftLimit(12, 5) → 18
 */
export function teamLiftLimit(limit: number, people: number): number {
  if (!(limit >= 0 && people >= 1)) throw new RangeError(`${people} people cannot share ${limit} kg.`);
  const count = Math.min(SHARES.length, Math.floor(people));
  return limit * count * (SHARES[count - 1] ?? 0);
}
