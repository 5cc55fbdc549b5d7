import type { Nodes } from 'mdast';

/** The folder in which a paper in Markdown has its figures; null where it shows none. Example: 'report-figures'. */
export function paperFigures(paper: readonly Nodes[]): string | null {
  const folders = paper.flatMap((node) =>
    node.type === 'image' ? (/^(.+-figures)\/[\w-]+\.svg$/.exec(node.url)?.[1] ?? []) : [],
  );
  return folders[0] ?? null;
}
