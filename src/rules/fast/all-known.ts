const known = new WeakMap<object, boolean>();

/** Is every number in it known, however deep? What is not stated, or lies in a range, is not. Looked at once. */
export function isAllKnown(of: unknown): boolean {
  if (of === 'unknown') return false;
  if (typeof of !== 'object' || of === null) return true;
  const before = known.get(of);
  if (before !== undefined) return before;
  const found =
    'low' in of && 'high' in of && 'gaps' in of ? of.low === of.high : Object.values(of).every(isAllKnown);
  known.set(of, found);
  return found;
}
