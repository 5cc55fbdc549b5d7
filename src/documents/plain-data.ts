import { isAlias, isMap, isScalar, isSeq, type Node, type ParsedNode } from 'yaml';
import { quoted } from './printable.ts';

/** What is wrong with a node, at its offset in the text. */
export interface NodeFault {
  readonly offset: number;
  readonly found: string;
  readonly expected: string;
  /** nothing can be said about the rest of the document */
  readonly fatal?: boolean;
}

export interface PlainData {
  readonly value: unknown;
  readonly faults: readonly NodeFault[];
}

/** How many values aliases may unfold into: enough for any shop, far too few for a bomb. */
const MOST_UNFOLDED = 50_000;
/** Keys that would reach into the objects of the language. */
const FORBIDDEN = new Set(['__proto__', 'prototype', 'constructor']);

interface Anchored {
  readonly value: unknown;
  readonly size: number;
}

/**
 * A parsed document as plain values: maps, lists, texts, finite numbers, true, false, null. Finds every key that
 * stands twice, every key that no map here may have, and every number that is none; never unfolds more aliases
 * than a person would write.
 */
export function plainData(root: ParsedNode | null): PlainData {
  const reader = new Reader();
  const { value } = reader.read(root);
  return { value, faults: reader.faults };
}

const NOTHING: Anchored = { value: null, size: 1 };

class Reader {
  readonly faults: NodeFault[] = [];
  /** null while the anchored node itself is being read */
  private readonly anchors = new Map<string, Anchored | null>();
  private unfolded = 0;

  read(node: Node | null): Anchored {
    if (node === null) return NOTHING;
    if (isAlias(node)) return this.readAlias(node, node.source);
    const anchor = isScalar(node) || isMap(node) || isSeq(node) ? node.anchor : undefined;
    if (anchor !== undefined) this.anchors.set(anchor, null);
    const result = isMap(node)
      ? this.readMap(node)
      : isSeq(node)
        ? this.readList(node)
        : this.readScalar(node);
    if (anchor !== undefined) this.anchors.set(anchor, result);
    return result;
  }

  private fault(node: Node, found: string, expected: string, fatal = false): Anchored {
    this.faults.push({ offset: node.range?.[0] ?? 0, found, expected, fatal });
    return NOTHING;
  }

  private readAlias(node: Node, name: string): Anchored {
    const target = this.anchors.get(name);
    if (target === undefined || target === null) {
      const why = target === null ? 'stands inside the value that it names' : 'names nothing before it';
      return this.fault(node, `the alias ${quoted(name)} ${why}`, 'expected the value itself', true);
    }
    const before = this.unfolded;
    this.unfolded += target.size;
    if (this.unfolded <= MOST_UNFOLDED) return target;
    if (before > MOST_UNFOLDED) return NOTHING;
    const found = `aliases unfold into more than ${MOST_UNFOLDED} values`;
    return this.fault(node, found, 'expected the values themselves', true);
  }

  private readList(node: Node): Anchored {
    const value: unknown[] = [];
    let size = 1;
    for (const item of isSeq<Node | null>(node) ? node.items : []) {
      const each = this.read(item);
      value.push(each.value);
      size += each.size;
    }
    return { value, size };
  }

  private readMap(node: Node): Anchored {
    const value: Record<string, unknown> = {};
    const seen = new Set<string>();
    let size = 1;
    for (const pair of isMap<Node | null, Node | null>(node) ? node.items : []) {
      const key = this.readKey(pair.key);
      const each = this.read(pair.value);
      size += each.size;
      if (key === null || pair.key === null) continue;
      if (seen.has(key))
        this.fault(pair.key, `the key ${quoted(key)} stands twice in this map`, 'expected it once');
      seen.add(key);
      value[key] = each.value;
    }
    return { value, size };
  }

  private readKey(node: Node | null): string | null {
    if (!isScalar(node) || typeof node.value === 'object') {
      if (node !== null) this.fault(node, 'this key is no plain word', 'expected a word before the colon');
      return null;
    }
    const key = String(node.value);
    if (!FORBIDDEN.has(key)) return key;
    this.fault(node, `the key ${quoted(key)} stands here`, 'expected a key that this format has');
    return null;
  }

  private readScalar(node: Node): Anchored {
    const value = isScalar(node) ? node.value : null;
    if (typeof value === 'number' && !Number.isFinite(value)) {
      const text = isScalar(node) && typeof node.source === 'string' ? node.source : String(value);
      return this.fault(
        node,
        `${quoted(text)} is no number to compute with`,
        'expected a finite number, or unknown',
      );
    }
    if (value === null || ['string', 'number', 'boolean'].includes(typeof value)) return { value, size: 1 };
    return this.fault(node, 'this value is no text, number, true or false', 'expected a plain value');
  }
}
