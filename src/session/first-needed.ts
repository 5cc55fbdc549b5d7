import type { Item, Survey } from './survey.ts';

/**
 * What a part still has to be told before anything is judged, as the end of a sentence; of several parts, of the one that has
 * been told most. Example: a size that was typed before the shape → 'a part needs a shape first, block or round'.
 */
export function firstNeeded({ items }: Survey): string {
  const parts = new Map<Item['subject'], ReadonlyMap<string, Item>>();
  for (const item of items) {
    if (item.subject === null || item.given === undefined) continue;
    parts.set(item.subject, new Map([...(parts.get(item.subject) ?? []), [item.question.id, item]]));
  }
  const needs = [...parts.values()].map(neededBy);
  return WORDS[Math.min(...needs, BOTH)] ?? '';
}

const [ONE_WAY, SHAPE, SIZE, BOTH] = [0, 1, 2, 3] as const;

const WORDS: readonly string[] = [
  'a part that may be a block or round needs its size both ways first',
  'a part needs a shape first, block or round',
  'a part needs a size first',
  'a part needs a shape and a size first',
];

function neededBy(said: ReadonlyMap<string, Item>): number {
  const hasSize = said.has('size') || (said.has('diameter') && said.has('length'));
  const shape = said.get('shape')?.given;
  if (shape === undefined) return hasSize ? SHAPE : BOTH;
  return shape.from === 'not sure' && hasSize ? ONE_WAY : SIZE;
}
