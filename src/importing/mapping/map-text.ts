import type { List } from '../../catalog/catalog.ts';
import { printable } from '../../documents/printable.ts';
import { scalar } from '../catalog-text.ts';
import { FIELDS } from '../fields/index.ts';
import type { ImportedSheet } from '../rows/import-sheet.ts';
import type { ImportMap } from './import-map.ts';
import { MAP_FORMAT } from './map-schema.ts';
import type { PlannedColumn } from './sheet-plan.ts';

/** The map of a file as it was read, to be edited: what nobody could guess stands in it as `unknown`. */
export function mapText(
  file: string,
  map: ImportMap,
  currency: string,
  sheets: readonly ImportedSheet[],
): string {
  const { source } = map;
  const lines = [
    `# How ${printable(file)} is read. Write what is unknown, and give this file back with --map.`,
    '# key: a key of the catalog, skip, or unknown; keys that share the numbers of a cell in their order: ["one", "other"].',
    '# unit: of the numbers that have none of their own. cells: what is meant by the words in its cells, such as',
    '# { "4th axis": single-axis, "on request": "-" } (- is not known). fixed: what every row is, by key.',
    '# All keys stand at the end.',
    `format: ${MAP_FORMAT}`,
    `units: ${map.units} # mm or inch: what lengths and masses without any unit are in`,
    `decimals: ${map.decimals} # point or comma: what stands before the decimals, where 1,500 leaves a doubt`,
    `currency: ${currency} # such as EUR: of all prices`,
    `source: { maker: ${scalar(source.maker)}, document: ${scalar(source.document)}, date: ${scalar(source.date)} }`,
    'sheets:',
    ...sheets.flatMap(sheetLines),
    ...LISTS.filter((list) =>
      sheets.some(({ plan }) => plan.list === list || plan.list === 'unknown'),
    ).flatMap(keyLines),
  ];
  return `${lines.join('\n')}\n`;
}

const LISTS = ['rotaries', 'machines'] as const;

/** Every key that a column can be. */
function keyLines(list: List): readonly string[] {
  const keys = FIELDS[list].map(({ path }) => path).join(', ');
  const lines = keys.match(/.{1,110}(?:,|$)/g) ?? [];
  const command = list === 'rotaries' ? 'rotary' : 'machine';
  return [
    `# Keys of ${list} (what they mean: fivesides catalog new ${command}):`,
    ...lines.map((line) => `#   ${line.trim()}`),
  ];
}

function sheetLines({ plan, withoutUnit, words }: ImportedSheet): readonly string[] {
  const fixed = Object.entries(plan.fixed).map(([path, text]) => `${scalar(path)}: ${scalar(text)}`);
  return [
    `  - sheet: ${plan.sheet === null ? 'null' : JSON.stringify(plan.sheet)}`,
    `    rows: ${plan.list} # rotaries, machines, or skip`,
    `    headings: [${plan.headings.join(', ')}] # the row that they stand in, or the two`,
    fixed.length === 0 ? '    fixed: {} # such as { class: trunnion }' : `    fixed: { ${fixed.join(', ')} }`,
    plan.columns.length === 0 ? '    columns: []' : '    columns:',
    ...plan.columns.map((column) => columnLine(column, withoutUnit.has(column), words.get(column))),
  ];
}

function columnLine(
  { column, heading, fields, unit, cells, left }: PlannedColumn,
  unitIsOpen: boolean,
  words: ReadonlyMap<string, string> = new Map(),
): string {
  const paths = fields.map(({ path }) => scalar(path));
  const none = left?.why === 'skipped' ? 'skip' : 'unknown';
  const key = paths.length === 0 ? none : paths.length === 1 ? paths[0] : `[${paths.join(', ')}]`;
  const open = unitIsOpen ? ', unit: unknown' : '';
  const said = unit === null ? open : `, unit: ${JSON.stringify(unit)}`;
  const meant = [
    ...[...cells].map(([text, means]) => `${JSON.stringify(text)}: ${scalar(means)}`),
    ...[...words].filter(([key]) => !cells.has(key)).map(([, text]) => `${JSON.stringify(text)}: unknown`),
  ];
  const of = meant.length === 0 ? '' : `, cells: { ${meant.join(', ')} }`;
  const likely = left === null || left.likely.length === 0 ? '' : ` # perhaps ${left.likely.join(', ')}`;
  return `      - { column: ${column}, heading: ${JSON.stringify(heading)}, key: ${key}${said}${of} }${likely}`;
}
