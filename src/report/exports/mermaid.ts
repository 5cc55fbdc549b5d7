import type { Decision } from '../../rules/decision.ts';
import type { Flowchart, FlowEdge, FlowNode } from '../blocks/block.ts';
import type { Inline } from '../blocks/inline.ts';
import { textOf } from '../blocks/inline-text.ts';

/** Characters that mean something to Mermaid or to the HTML that it draws labels with, as named entities. */
const ENTITIES: Readonly<Record<string, string>> = {
  '"': '#quot;',
  '#': '#num;',
  '&': '#amp;',
  '<': '#lt;',
  '>': '#gt;',
  '`': '#grave;',
  '\\': '#bsol;',
  '*': '#ast;',
  _: '#lowbar;',
  ';': '#semi;',
  '|': '#vert;',
  '[': '#lbrack;',
  ']': '#rbrack;',
  '{': '#lbrace;',
  '}': '#rbrace;',
  '%': '#percnt;',
  $: '#dollar;',
};

/** Text that is only text inside a quoted Mermaid label. Example: a "b" → a #quot;b#quot; */
const mermaidText = (text: string): string =>
  text.replace(/["#&<>`\\*_;|[\]{}%$]/g, (character) => ENTITIES[character] ?? '');

/** A flowchart from top to bottom in Mermaid's language; the taken path has thick lines and words on them. */
export function mermaidChart(chart: Flowchart, decision: Decision): string {
  const label = (lines: readonly (readonly Inline[])[]): string =>
    `"${lines.map((line) => mermaidText(textOf(line, decision, { ascii: false }))).join('<br/>')}"`;
  const node = ({ id, shape, lines }: FlowNode): string => {
    const [open, close] = SHAPES[shape];
    return `  ${id}${open}${label(lines)}${close}`;
  };
  const edge = ({ from, to, taken, label: text }: FlowEdge): string => {
    const line = taken ? '==>' : '-.->';
    return `  ${from} ${line}${text.length === 0 ? '' : `|${label([text])}|`} ${to}`;
  };
  return ['flowchart TD', ...chart.nodes.map(node), ...chart.edges.map(edge)].join('\n');
}

const SHAPES: Readonly<Record<FlowNode['shape'], readonly [open: string, close: string]>> = {
  step: ['[', ']'],
  aside: ['>', ']'],
  end: ['([', '])'],
};
