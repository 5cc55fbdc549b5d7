/** Kept by the words of a set, one after the other. */
type Branch<Kept> = Map<number, Branch<Kept> | Kept>;

/**
 * Makes something of a set of families once for all that are equal to it: of a whole market's sets few are different.
 * Example: perSet(1, (set) => set.slice()) gives the same array for every set of family 3 alone.
 */
export function perSet<Kept>(words: number, make: (set: Uint32Array) => Kept): (set: Uint32Array) => Kept {
  const root: Branch<Kept> = new Map();
  return (set) => {
    let at = root;
    for (let word = 0; word < words - 1; word += 1) {
      const next = (at.get(set[word] as number) as Branch<Kept> | undefined) ?? new Map();
      at.set(set[word] as number, next);
      at = next;
    }
    const last = set[words - 1] as number;
    const known = at.get(last) as Kept | undefined;
    if (known !== undefined) return known;
    const made = make(set);
    at.set(last, made);
    return made;
  };
}
