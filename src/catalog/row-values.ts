/** What stands at the end of a path: a value, unknown, or that there is none. */
export type RowValue = string | number | boolean | null;

/**
 * The values of a row by their paths, in the order of the row.
 * Example: { payload: { level: 50 }, tilt: [0, 90] } → payload.level: 50, tilt[0]: 0, tilt[1]: 90.
 */
export function valuesByPath(row: object): ReadonlyMap<string, RowValue> {
  const values = new Map<string, RowValue>();
  const collect = (path: string, value: unknown): void => {
    if (typeof value === 'object' && value !== null) {
      for (const [key, each] of Object.entries(value))
        collect(Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`, each);
    } else if (value !== undefined) values.set(path, value as RowValue);
  };
  collect('', row);
  return values;
}
