import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';

/** Everything that a paper in Markdown is made of, in the order in which it stands there. Read once: it takes a while. */
export function paperNodes(markdown: string): readonly Nodes[] {
  const found: Nodes[] = [];
  const visit = (node: Nodes): void => {
    found.push(node);
    if ('children' in node) for (const child of node.children) visit(child);
  };
  visit(fromMarkdown(markdown));
  return found;
}
