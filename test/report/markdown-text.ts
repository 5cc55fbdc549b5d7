import type { Nodes } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

/** Markdown as a reader's program sees it. */
export const parseMarkdown = (markdown: string): Nodes =>
  unified().use(remarkParse).use(remarkGfm).parse(markdown) as Nodes;

/** Every node, from the top. */
export const nodesOf = (node: Nodes): readonly Nodes[] => [
  node,
  ...('children' in node ? node.children.flatMap((child) => nodesOf(child as Nodes)) : []),
];

const ENTITIES: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&amp;': '&' };

/** What is read: text, code, and what stands in a summary. The files with answers and inputs are left out. */
export const readText = (markdown: string): string =>
  nodesOf(parseMarkdown(markdown))
    .map((node) => {
      if (node.type === 'html')
        return node.value.replace(/<\/?\w+>/g, '').replace(/&\w+;/g, (entity) => ENTITIES[entity] ?? entity);
      if (node.type === 'code') return node.lang === 'yaml' || node.lang === 'json' ? '' : node.value;
      return 'value' in node ? node.value : '';
    })
    .join('\n');

/** The code of a block in this language; undefined where there is none. */
export const codeIn = (markdown: string, lang: string): string | undefined =>
  nodesOf(parseMarkdown(markdown)).flatMap((node) =>
    node.type === 'code' && node.lang === lang ? [node.value] : [],
  )[0];
