import { isMap, isScalar, isSeq, type Node } from 'yaml';
import type { Path } from './place.ts';

/**
 * Offset in the text of the value at a path, or of its key; where the path leads to nothing, of the last thing on
 * the way that is there. An alias is not followed: what is wrong behind it stands where it is used.
 */
export function offsetOf(root: Node, path: Path, what: 'key' | 'value'): number {
  let node: Node | null = root;
  let offset = root.range?.[0] ?? 0;
  for (const [index, step] of path.entries()) {
    const next = stepInto(node, step);
    if (next === null) return offset;
    const isLast = index === path.length - 1;
    offset = (isLast && what === 'key' ? next.key : next.value) ?? next.key ?? offset;
    node = next.node;
  }
  return offset;
}

interface Step {
  readonly node: Node | null;
  readonly key: number | undefined;
  readonly value: number | undefined;
}

function stepInto(node: Node | null, step: string | number): Step | null {
  if (isMap<Node | null, Node | null>(node)) {
    const pair = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
    if (pair === undefined) return null;
    return {
      node: pair.value,
      key: pair.key?.range?.[0],
      value: pair.value?.range?.[0],
    };
  }
  if (isSeq<Node | null>(node)) {
    const item = node.items[Number(step)];
    return item === undefined ? null : { node: item, key: undefined, value: item?.range?.[0] };
  }
  return null;
}
