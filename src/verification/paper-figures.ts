import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';

/** The folder in which a paper in Markdown has its figures; null where it shows none. Example: 'report-figures'. */
export function paperFigures(markdown: string): string | null {
  const folderIn = (node: Nodes): string | null => {
    if (node.type === 'image') return /^(.+-figures)\/[\w-]+\.svg$/.exec(node.url)?.[1] ?? null;
    if (!('children' in node)) return null;
    for (const child of node.children) {
      const folder = folderIn(child);
      if (folder !== null) return folder;
    }
    return null;
  };
  return folderIn(fromMarkdown(markdown));
}
