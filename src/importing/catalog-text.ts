import type { List } from '../catalog/catalog.ts';
import { CATALOG_FORMAT } from '../catalog/catalog-schema.ts';
import { isMap } from '../documents/fields/strict-map.ts';
import { printable } from '../documents/printable.ts';

import { isLeaf, type Leaf, rowTree, type Tree } from './rows/row-tree.ts';
import type { TakenRow } from './rows/taken-row.ts';

/** Where the rows of a catalog file come from. */
export interface Origin {
  /** the file that was imported, without its folder */
  readonly file: string;
  readonly currency: string | 'unknown';
  readonly maker: string | 'unknown';
  readonly document: string | 'unknown';
  readonly date: string | 'unknown';
}

/** A catalog file in mm and kg; behind each value a comment with its cell, and what was written there. */
export function catalogText(list: List, rows: readonly TakenRow[], origin: Origin): string {
  const { maker, document, date, currency } = origin;
  const stated = Object.entries({ maker, document, date }).filter(([, text]) => text !== 'unknown');
  const source = stated.map(([key, text]) => `${key}: ${scalar(text)}`).join(', ');
  const lines = [
    `# Imported from ${comment(origin.file)}. Behind each value: its cell, and what stands in it.`,
    `format: ${CATALOG_FORMAT}`,
    'units: mm',
    ...(currency === 'unknown' ? [] : [`currency: ${currency}`]),
    ...(source === '' ? [] : [`source: { ${source} }`]),
    `${list}:`,
    ...rows.flatMap(rowLines),
  ];
  return `${lines.join('\n')}\n`;
}

function rowLines(row: TakenRow): readonly string[] {
  const lines = treeLines(rowTree(row), '    ');
  const where = row.sheet === null ? `row ${row.row}` : `sheet ${row.sheet}, row ${row.row}`;
  return [
    `  # ${comment(where)}`,
    ...lines.map((line, at) => (at === 0 ? line.replace(/^ {4}/, '  - ') : line)),
  ];
}

const treeLines = (tree: Tree, indent: string): readonly string[] =>
  Object.entries(tree).flatMap(([key, node]) => {
    if (isLeaf(node)) return [`${indent}${key}: ${valueText(node.value)}${cellsText(node)}`];
    if (Object.keys(node).length === 0) return [`${indent}${key}: {}`];
    return [`${indent}${key}:`, ...treeLines(node, `${indent}  `)];
  });

const cellsText = ({ cells }: Leaf): string => (cells.length === 0 ? '' : ` # ${comment(cells.join(', '))}`);

/** One line that cannot end the comment it stands in, nor steer a display. */
const comment = (text: string): string => printable(text.replace(/\s+/g, ' ')).slice(0, 300);

function valueText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(valueText).join(', ')}]`;
  if (isMap(value)) {
    const entries = Object.entries(value).map(([key, each]) => `${key}: ${valueText(each)}`);
    return `{ ${entries.join(', ')} }`;
  }
  return typeof value === 'string' ? scalar(value) : String(value);
}

/** A text as YAML reads it back. */
export const scalar = (text: string): string =>
  /^[A-Za-z][A-Za-z0-9_-]*(?: [A-Za-z0-9_-]+)*$/.test(text) &&
  !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(text)
    ? text
    : JSON.stringify(text);
