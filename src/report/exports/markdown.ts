import { gfmToMarkdown } from 'mdast-util-gfm';
import { toMarkdown } from 'mdast-util-to-markdown';
import type { Decision } from '../../rules/decision.ts';
import type { Block } from '../blocks/block.ts';
import { wholeReport } from '../whole-report.ts';
import { markdownTree } from './markdown-tree.ts';

/** Blocks as Markdown (CommonMark with tables). Ends with one line break. */
export function markdownOf(
  blocks: readonly Block[],
  decision: Decision,
  figures: string | null = null,
): string {
  const tree = { type: 'root' as const, children: markdownTree(blocks, decision, figures) };
  return toMarkdown(tree, {
    bullet: '-',
    rule: '-',
    fences: true,
    extensions: [gfmToMarkdown({ tablePipeAlign: false })],
  });
}

/**
 * The whole decision as Markdown, line by line checkable. `figures`: the folder beside it in which its pictures are; none:
 * what they say stands in words. Ends with one line break.
 */
export const markdownReport = (decision: Decision, figures: string | null = null): string =>
  markdownOf(wholeReport(decision), decision, figures);
