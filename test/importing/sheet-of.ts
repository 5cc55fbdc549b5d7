import { parse } from 'yaml';
import { type CatalogFileText, finishImport } from '../../src/importing/finish-import.ts';
import { type ImportMap, NO_MAP, type SheetMap } from '../../src/importing/mapping/import-map.ts';
import { sheetImporter } from '../../src/importing/rows/import-sheet.ts';

/** A sheet from its lines, cells with | between them; empty lines count as rows. */
export function sheetOf(lines: string, map: ImportMap = NO_MAP, sheet: string | null = null) {
  const importer = sheetImporter(sheet, map);
  for (const [index, line] of lines.split('\n').entries())
    importer.row({ row: index + 1, cells: line.split('|').map((cell) => cell.trim()) });
  return importer.end();
}

/** A table from its lines as a catalog, with what was told about its cells in short: `C4 found`. */
export function imported(lines: string, map: Partial<ImportMap> = {}) {
  const whole = { ...NO_MAP, ...map };
  const result = finishImport('list.csv', whole, [sheetOf(lines, whole)]);
  return {
    ...result,
    rows: result.files.flatMap(rowsOf),
    told: result.faults.map(({ row, column, found }) => `${column ?? 'row '}${row} ${found}`),
  };
}

/** A map of the only sheet of a text. */
export const sheetMap = (map: Partial<SheetMap>): Partial<ImportMap> => ({
  sheets: [{ sheet: null, rows: 'unknown', headings: [], fixed: {}, columns: [], ...map }],
});

function rowsOf({ text }: CatalogFileText): readonly Record<string, unknown>[] {
  const { rotaries, machines } = parse(text) as Record<string, Record<string, unknown>[]>;
  return rotaries ?? machines ?? [];
}
