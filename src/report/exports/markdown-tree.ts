import type { Html, PhrasingContent, RootContent, TableRow } from 'mdast';
import type { Decision } from '../../rules/decision.ts';
import type { Block, Details, Table } from '../blocks/block.ts';
import type { Inline } from '../blocks/inline.ts';
import { inlineText, textOf } from '../blocks/inline-text.ts';
import type { Figure } from '../figures/figure.ts';
import { answersYaml } from './answers-yaml.ts';
import { figureFile } from './figure-files.ts';
import { INPUTS_FENCE, inputsJson } from './inputs-json.ts';
import { mermaidChart } from './mermaid.ts';

const SIGNS = { ascii: false };

/**
 * Blocks as a Markdown tree, pictures from a folder (null: their words instead). Whatever a name holds stays text: the serializer escapes it.
 */
export const markdownTree = (
  blocks: readonly Block[],
  decision: Decision,
  figures: string | null,
): RootContent[] => blocks.flatMap((block) => nodesOf(block, decision, figures));

function nodesOf(block: Block, decision: Decision, figures: string | null): RootContent[] {
  switch (block.kind) {
    case 'heading':
      return [
        {
          type: 'heading',
          depth: block.level,
          children: phrases(block.text, decision),
        },
      ];
    case 'paragraph':
      return [{ type: 'paragraph', children: phrases(block.text, decision) }];
    case 'list':
      return [
        {
          type: 'list',
          ordered: false,
          spread: false,
          children: block.items.map((item) => ({
            type: 'listItem',
            spread: false,
            checked: block.boxes === true ? false : null,
            children: [{ type: 'paragraph', children: phrases(item, decision) }],
          })),
        },
      ];
    case 'table':
      return [tableNode(block, decision)];
    case 'details':
      return detailsNodes(block, decision, figures);
    case 'figure':
      return [figureNode(block.figure, decision, figures)];
    case 'flowchart':
      return [{ type: 'code', lang: 'mermaid', value: mermaidChart(block, decision) }];
    case 'command':
      return [
        {
          type: 'code',
          lang: 'sh',
          value: textOf(block.line, decision, SIGNS),
        },
      ];
    case 'answers-file':
      return [
        {
          type: 'code',
          lang: 'yaml',
          value: answersYaml(decision.inputs.answers),
        },
      ];
    case 'inputs-file':
      return [{ type: 'code', lang: 'json', meta: INPUTS_FENCE, value: inputsJson(decision) }];
  }
}

/** The picture, and for whoever does not see it its words; the words alone where no pictures are written. */
function figureNode({ scene, words }: Figure, decision: Decision, figures: string | null): RootContent {
  if (figures === null) return { type: 'paragraph', children: phrases(words, decision) };
  const image = { type: 'image' as const, url: `${figures}/${figureFile(scene)}`, alt: scene.description };
  return { type: 'paragraph', children: [image] };
}

/** Pieces of a sentence as phrasing nodes; text beside text is one node, so that it is escaped as a whole. */
function phrases(sentence: readonly Inline[], decision: Decision): PhrasingContent[] {
  const nodes: PhrasingContent[] = [];
  for (const inline of sentence) {
    const value = inlineText(inline, decision, SIGNS);
    const before = nodes.at(-1);
    if (inline.kind === 'strong')
      nodes.push({
        type: 'strong',
        children: phrases(inline.children, decision),
      });
    else if (isCode(inline, value)) nodes.push({ type: 'inlineCode', value });
    else if (before?.type === 'text') before.value += value;
    else nodes.push({ type: 'text', value });
  }
  return nodes;
}

/** Readers make links of addresses even where they are escaped; inside code they leave them alone. */
const isCode = (inline: Inline, value: string): boolean =>
  'code' in inline && (inline.code || /@|www\.|:\/\//i.test(value));

function tableNode(block: Table, decision: Decision): RootContent {
  const row = (cells: Table['head']): TableRow => ({
    type: 'tableRow',
    children: cells.map((cell) => ({
      type: 'tableCell',
      children: phrases(cell, decision),
    })),
  });
  return {
    type: 'table',
    align: [...block.align],
    children: [row(block.head), ...block.rows.map(row)],
  };
}

/** The only HTML in the document: Markdown has nothing that folds. */
function detailsNodes(block: Details, decision: Decision, figures: string | null): RootContent[] {
  const summary = htmlText(textOf(block.summary, decision, SIGNS));
  const open: Html = {
    type: 'html',
    value: `<details>\n<summary>${summary}</summary>`,
  };
  return [open, ...markdownTree(block.blocks, decision, figures), { type: 'html', value: '</details>' }];
}

const HTML_ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

const htmlText = (text: string): string =>
  text.replace(/[&<>"]/g, (character) => HTML_ENTITIES[character] ?? '');
