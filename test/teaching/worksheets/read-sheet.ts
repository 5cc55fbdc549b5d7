import type { Nodes, RootContent, Table } from 'mdast';
import { parseMarkdown } from '../../report/markdown-text.ts';
import { typed } from '../by-mathjs.ts';

/** A step as somebody reads it on paper. */
export interface ReadStep {
  readonly number: number;
  /** symbol → the label under which its number is given */
  readonly symbols: Readonly<Record<string, string>>;
  readonly definitions: readonly { name: string; of: readonly string[]; formula: string; words: string }[];
  readonly steps: readonly { gives: string; formula: string; words: string; unit: string }[];
  /** names of what is asked for; null: a verdict, or nothing to be worked out */
  readonly asked: string | null;
  /** `z_n ≤ z` */
  readonly rule: string | null;
  /** what is found of a kind: the first of which one rule is so (`N1 > L1`), else the last word */
  readonly findings: readonly { readonly comesTo: string; readonly rules: readonly string[] }[];
  readonly text: string;
  readonly options: readonly string[];
}

/** A worksheet read back from its Markdown, and from nothing else. */
export interface ReadSheet {
  /** label → the number that is written there */
  readonly given: Readonly<Record<string, number>>;
  /** label → all that is written there */
  readonly givenTexts: Readonly<Record<string, string>>;
  readonly steps: readonly ReadStep[];
  readonly images: readonly { readonly url: string; readonly alt: string }[];
}

export function readSheet(markdown: string): ReadSheet {
  const tree = parseMarkdown(markdown);
  const nodes = 'children' in tree ? (tree.children as readonly RootContent[]) : [];
  const givenTexts = Object.fromEntries(
    tablesIn(nodes, 'Label').flatMap((rows) => rows.map(([label = '', , value = '']) => [label, value])),
  );
  return {
    givenTexts,
    given: Object.fromEntries(Object.entries(givenTexts).map(([label, text]) => [label, numberIn(text)])),
    steps: stretches(nodes).map(readStep),
    images: nodes.flatMap((node) =>
      node.type === 'paragraph'
        ? node.children.flatMap((each) =>
            each.type === 'image' ? [{ url: each.url, alt: each.alt ?? '' }] : [],
          )
        : [],
    ),
  };
}

/** What stands first: `−12.5 mm (−0.492 in)` → −12.5. Throws where there is none. */
function numberIn(text: string): number {
  const [found] = /^[−-]?[\d.]+/.exec(text) ?? [];
  if (found === undefined) throw new Error(`no number in ${text}`);
  return Number(found.replace('−', '-'));
}

/** The nodes of each step, behind its heading. */
function stretches(nodes: readonly RootContent[]): readonly (readonly RootContent[])[] {
  const starts = nodes.flatMap((node, index) =>
    node.type === 'heading' && /^Step \d+$/.test(textIn(node)) ? [index] : [],
  );
  return starts.map((start, index) => nodes.slice(start, starts[index + 1]));
}

function readStep(nodes: readonly RootContent[]): ReadStep {
  const [heading] = nodes;
  const said = nodes.map((node) => textIn(node));
  const lists = nodes.flatMap((node) => (node.type === 'list' ? [node] : []));
  const items = lists.flatMap(({ children }) => children);
  return {
    number: Number(/\d+/.exec(heading === undefined ? '' : textIn(heading))?.[0]),
    symbols: Object.fromEntries(
      tablesIn(nodes, 'Symbol').flatMap((rows) => rows.map(([symbol = '', , label = '']) => [symbol, label])),
    ),
    definitions: items.flatMap((item) => {
      const [, name, of, formula] = /^(\w+)\(([^)]*)\) = (.*?): /.exec(textIn(item)) ?? [];
      if (name === undefined || of === undefined || formula === undefined) return [];
      return [{ name, of: of.split(', '), formula: typed(formula), words: '' }];
    }),
    steps: tablesIn(nodes, 'What it gives').flatMap((rows) =>
      rows.map(([words = '', line = '', comesTo = '', unit = '']) => {
        if (comesTo !== '') throw new Error(`${line} is worked out already: ${comesTo}`);
        const [gives = '', formula = ''] = line.split(/ = (.*)/s);
        return { gives, formula: typed(formula), words, unit };
      }),
    ),
    asked: firstOf(said, /^Asked for: (\w+)\.$/),
    rule: firstOf(said, /^It holds where (.*?);/),
    findings: readFindings(nodes, said),
    text: said.join('\n'),
    options: items.flatMap((item) => (item.checked === false ? [textIn(item)] : [])),
  };
}

/** `It is ruled out where one of these is so:` and the list below it; `Else it suits.`; of a word the same with `The answer is`. */
const readFindings = (nodes: readonly RootContent[], said: readonly string[]): ReadStep['findings'] =>
  said.flatMap((line, index) => {
    const [, first, other, last] =
      /^(?:(?:It is|The answer is) ([\w ]+) where (?:one of these|this) is so:|Else it is (\w+), and no more, where one of these is so:|Else (?:it|the answer is) ([\w ]+)\.)$/.exec(
        line,
      ) ?? [];
    const comesTo = first ?? other ?? last;
    if (comesTo === undefined) return [];
    const list = nodes[index + 1];
    const items = last === undefined && list?.type === 'list' ? list.children : [];
    return [{ comesTo, rules: items.map((item) => typed(textIn(item).replace(/:.*$/s, ''))) }];
  });

const firstOf = (lines: readonly string[], pattern: RegExp): string | null =>
  lines.flatMap((line) => pattern.exec(line)?.[1] ?? [])[0] ?? null;

/** Rows of the tables whose first column is called so. */
function tablesIn(nodes: readonly RootContent[], head: string): readonly (readonly (readonly string[])[])[] {
  return nodes.flatMap((node) => {
    if (node.type !== 'table') return [];
    const [first, ...rows] = rowsOf(node);
    return first?.[0] === head ? [rows] : [];
  });
}

const rowsOf = ({ children }: Table): readonly (readonly string[])[] =>
  children.map((row) => row.children.map((cell) => textIn(cell)));

/** All that is written in a node. */
const textIn = (node: Nodes): string =>
  'value' in node ? node.value : 'children' in node ? node.children.map((each) => textIn(each)).join('') : '';
