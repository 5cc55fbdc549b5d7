/** Objects are merged key by key; lists and single values are put in place of what was there. */
export function merged<T>(base: T, change: unknown): T {
  if (change === undefined) return base;
  if (typeof change !== 'object' || change === null || Array.isArray(change)) return change as T;
  if (typeof base !== 'object' || base === null || Array.isArray(base)) return change as T;
  const result = { ...base } as Record<string, unknown>;
  for (const [key, value] of Object.entries(change)) {
    if (value === undefined) delete result[key];
    else result[key] = merged(result[key], value);
  }
  return result as T;
}
