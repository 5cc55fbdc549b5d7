import type { Item } from './items.ts';

const known = new WeakMap<readonly Item[], readonly Item[]>();

/** The questions of the jump list, each to be answered otherwise for once. */
export function tryItems(items: readonly Item[]): readonly Item[] {
  const found = known.get(items);
  if (found !== undefined) return found;
  const tries = items.map((each): Item => {
    const { act } = each;
    if (act.do !== 'event' || act.event.type !== 'go') return each;
    return { ...each, act: { do: 'event', event: { type: 'try', to: act.event.to } } };
  });
  known.set(items, tries);
  return tries;
}
