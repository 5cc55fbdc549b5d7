import type { List } from '../../catalog/catalog.ts';
import { nearest } from '../../documents/nearest.ts';
import { parseDocument } from '../../documents/parse-document.ts';
import type { Path } from '../../documents/place.ts';
import { quoted } from '../../documents/printable.ts';
import { inOrder, type Problem, type Reading, withSchemaProblems } from '../../documents/problem.ts';
import { type FaultAt, problemAt, schemaProblems } from '../../documents/problems-from-issues.ts';
import { allowedForms } from '../../quantities/describe-fault.ts';
import { unitNamed } from '../../quantities/units.ts';
import { kindOf } from '../fields/import-field.ts';
import { FIELDS, fieldAt } from '../fields/index.ts';
import type { ImportMap, MappedColumn } from './import-map.ts';
import { MAP_SCHEMA } from './map-schema.ts';

export interface MapReading {
  readonly map: ImportMap;
  /** where the heading of a column stands in the map, for what is found out later */
  readonly columnProblem: (sheet: number, column: number, found: string, expected: string) => Problem;
}

/** Reads a map; every problem with file, line and column. */
export function readMap(text: string, file: string): Reading<MapReading> {
  const parsed = parseDocument(text, file);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  const result = MAP_SCHEMA.safeParse(document.value);
  if (!result.success) {
    const found = schemaProblems(() => MAP_SCHEMA, document, file);
    return { ok: false, problems: inOrder(withSchemaProblems(document.problems, found)) };
  }
  const { units, decimals, currency, source, sheets } = result.data;
  const faults: FaultAt[] = [];
  const mapped = sheets.map((each, at) => {
    const path = ['sheets', at];
    const fixed = Object.fromEntries(Object.entries(each.fixed).map(([key, value]) => [key, String(value)]));
    if (each.rows === 'rotaries' || each.rows === 'machines') {
      for (const key of Object.keys(fixed))
        faults.push(...keyFaults(each.rows, key, [...path, 'fixed', key], true));
    }
    const columns = each.columns.map((column, index): MappedColumn => {
      const { key, unit, heading } = column;
      const keys = key === 'skip' || key === 'unknown' ? key : typeof key === 'string' ? [key] : key;
      const own = [...path, 'columns', index];
      if (keys !== 'skip' && keys !== 'unknown' && (each.rows === 'rotaries' || each.rows === 'machines')) {
        for (const one of keys) faults.push(...keyFaults(each.rows, one, [...own, 'key'], false));
        if (unit !== 'unknown') faults.push(...unitFaults(each.rows, keys, unit, [...own, 'unit']));
      }
      const cells = new Map(
        Object.entries(column.cells)
          .filter(([, means]) => means !== 'unknown')
          .map(([text, means]) => [text.trim().toLowerCase(), String(means)]),
      );
      return { column: column.column, heading, keys, unit: unit === 'unknown' ? null : unit, cells };
    });
    return { sheet: each.sheet, rows: each.rows, headings: each.headings, fixed, columns };
  });
  const problems = [...document.problems, ...faults.map((fault) => problemAt(fault, document, file))];
  if (problems.length > 0) return { ok: false, problems: inOrder(problems) };
  const map: ImportMap = { units, decimals, currency, source, sheets: mapped };
  return {
    ok: true,
    value: {
      map,
      columnProblem: (sheet, column, found, expected) =>
        problemAt({ path: ['sheets', sheet, 'columns', column, 'heading'], found, expected }, document, file),
    },
  };
}

function keyFaults(list: List, key: string, path: Path, atKey: boolean): readonly FaultAt[] {
  if (fieldAt(list, key) !== undefined) return [];
  const near = nearest(
    key,
    FIELDS[list].map((field) => field.path),
  );
  const expected = `expected a key of ${list}, such as ${list === 'rotaries' ? 'swing' : 'travel[0]'}, skip or unknown; a new map lists them all`;
  return [
    {
      path,
      atKey,
      found: `${quoted(key)} is no key`,
      expected,
      ...(near === undefined ? {} : { didYouMean: near }),
    },
  ];
}

function unitFaults(list: List, keys: readonly string[], unit: string, path: Path): readonly FaultAt[] {
  return keys.flatMap((key) => {
    const field = fieldAt(list, key);
    const kind = field === undefined ? null : kindOf(field);
    if (kind === null || unitNamed(kind, unit) !== undefined) return [];
    return [
      { path, found: `${quoted(unit)} is no unit of ${key}`, expected: `expected ${allowedForms(kind)}` },
    ];
  });
}
