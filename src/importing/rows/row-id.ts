/**
 * An id made from a name: letters and digits of the Latin alphabet in lower case, hyphens between them; null where a
 * name has none. Example: rowId('Gray Wagtail (large)') → 'gray-wagtail-large'.
 */
export function rowId(name: string): string | null {
  const id = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9._]+/g, '-')
    .replace(/^[^a-z0-9]+|[^a-z0-9]+$/g, '')
    .slice(0, 50);
  if (id === '') return null;
  return ['none', 'unknown', 'built-in'].includes(id) ? `${id}-1` : id;
}

/** The id, or the id with the first number behind it that nobody has. */
export function freeId(id: string, taken: ReadonlySet<string>): string {
  if (!taken.has(id)) return id;
  let number = 2;
  while (taken.has(`${id}-${number}`)) number += 1;
  return `${id}-${number}`;
}
