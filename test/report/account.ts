import type { Block } from '../../src/report/blocks/block.ts';
import type { Inline } from '../../src/report/blocks/inline.ts';

/** Every piece of text of a report in the order in which it is printed. */
export function inlinesOf(blocks: readonly Block[]): readonly Inline[] {
  return blocks.flatMap(piecesOf);
}

function piecesOf(block: Block): readonly Inline[] {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return flat(block.text);
    case 'list':
      return block.items.flatMap(flat);
    case 'table':
      return [...block.head, ...block.rows.flat()].flatMap(flat);
    case 'details':
      return [...flat(block.summary), ...inlinesOf(block.blocks)];
    case 'figure':
      return flat(block.figure.words);
    case 'flowchart':
      return [
        ...block.nodes.flatMap((node) => node.lines.flatMap(flat)),
        ...block.edges.flatMap((edge) => flat(edge.label)),
      ];
    case 'command':
      return flat(block.line);
    case 'answers-file':
    case 'inputs-file':
      return [];
  }
}

const flat = (sentence: readonly Inline[]): readonly Inline[] =>
  sentence.flatMap((inline) => (inline.kind === 'strong' ? flat(inline.children) : [inline]));

/** Digits and points that stand together, as they are written. */
export const numbersIn = (text: string): readonly string[] => text.match(/\d+(?:[.\u202f]\d+)*/g) ?? [];
