import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { INPUTS_FENCE } from '../report/index.ts';

/** The inputs that a paper carries, as JSON text, and the line where they begin. */
export interface PaperInputs {
  readonly text: string;
  readonly line: number;
}

/** The fenced inputs of a paper in Markdown; null where it carries none. Should there be several, the last. */
export function paperInputs(markdown: string): PaperInputs | null {
  let found: PaperInputs | null = null;
  const visit = (node: Nodes): void => {
    if (node.type === 'code' && node.lang === 'json' && node.meta === INPUTS_FENCE) {
      found = { text: node.value, line: (node.position?.start.line ?? 0) + 1 };
    }
    if ('children' in node) for (const child of node.children) visit(child);
  };
  visit(fromMarkdown(markdown));
  return found;
}
