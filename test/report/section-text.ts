import type { Block } from '../../src/report/blocks/block.ts';
import type { Inline } from '../../src/report/blocks/inline.ts';
import { textOf } from '../../src/report/blocks/inline-text.ts';
import type { Decision } from '../../src/rules/decision.ts';

/** Blocks of a section as plain lines: cells of a row with bars between, nothing wrapped. */
export const blockText = (blocks: readonly Block[], decision: Decision): string =>
  blocks.flatMap((block) => linesOf(block, decision)).join('\n');

function linesOf(block: Block, decision: Decision): readonly string[] {
  const text = (sentence: readonly Inline[]): string => textOf(sentence, decision, { ascii: false });
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return [text(block.text)];
    case 'list':
      return block.items.map((item) => `- ${text(item)}`);
    case 'table':
      return [block.head, ...block.rows].map((row) => row.map(text).join(' | '));
    case 'details':
      return [text(block.summary), ...block.blocks.flatMap((each) => linesOf(each, decision))];
    default:
      return [];
  }
}
