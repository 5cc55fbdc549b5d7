import { gfmToMarkdown } from 'mdast-util-gfm';
import { toMarkdown } from 'mdast-util-to-markdown';
import type { Decision } from '../../rules/decision.ts';
import { wholeReport } from '../whole-report.ts';
import { markdownTree } from './markdown-tree.ts';

/** The whole decision as Markdown (CommonMark with tables), line by line checkable. Ends with one line break. */
export function markdownReport(decision: Decision): string {
  const tree = {
    type: 'root' as const,
    children: markdownTree(wholeReport(decision), decision),
  };
  return toMarkdown(tree, {
    bullet: '-',
    rule: '-',
    fences: true,
    extensions: [gfmToMarkdown({ tablePipeAlign: false })],
  });
}
