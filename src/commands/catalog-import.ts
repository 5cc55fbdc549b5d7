import { closeSync, createReadStream, openSync, readFileSync, readSync, statSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { catalogFiles, readCatalog } from '../catalog/read.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem, type Problem, type Reading, wholeFile } from '../documents/problem.ts';
import { inWords, readFileText } from '../documents/read-file.ts';
import { isFolder, writeFileText } from '../documents/write-file.ts';
import { faultLine, importSummary } from '../importing/describe-import.ts';
import { finishImport, type Imported } from '../importing/finish-import.ts';
import { type ImportMap, NO_MAP } from '../importing/mapping/import-map.ts';
import { mapText } from '../importing/mapping/map-text.ts';
import { type MapReading, readMap } from '../importing/mapping/read-map.ts';
import { type ImportedSheet, sheetImporter } from '../importing/rows/import-sheet.ts';
import { csvRows } from '../importing/sheet/csv-rows.ts';
import { UnreadableSheet } from '../importing/sheet/unreadable-sheet.ts';
import { xlsxSheets } from '../importing/sheet/xlsx-sheets.ts';
import { filePath } from './file-path.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { OUTCOME_CODES, UNUSABLE } from './outcome-codes.ts';
import { writeFiles } from './write-files.ts';

interface ImportOptions {
  readonly map?: string;
  readonly out?: string;
  readonly overwrite?: boolean;
}

/** Something has to be said in the map, or stands in a cell and is not understood. */
const OPEN = OUTCOME_CODES.open;
const LARGEST_WORKBOOK = 20 * 1024 * 1024;

/**
 * `fivesides catalog import`: a table of rotaries or machines as a catalog, written whole into a folder. What is not
 * understood is left unknown and told; what has to be said is written to a map. Exit code 0, 4 where something is open, 2
 * where nothing is written.
 */
export async function catalogImport(
  file: string,
  options: ImportOptions,
  lines: Lines = PROCESS_LINES,
  cwd: string = process.cwd(),
): Promise<number> {
  const refuse = (problems: readonly Problem[]): number => {
    for (const problem of problems) lines.remark(describeProblem(problem));
    return UNUSABLE;
  };
  const map = mapOf(options.map, cwd);
  if (!map.ok) return refuse(map.problems);
  const sheets = await sheetsOf(file, filePath(file, cwd), map.value?.map ?? NO_MAP);
  if (!sheets.ok) return refuse(sheets.problems);
  const strangers = map.value === null ? [] : strangersIn(sheets.value, map.value);
  if (strangers.length > 0) return refuse(strangers);
  const name = basename(file);
  const shown = options.out ?? `${stem(name)}-catalog`;
  const out = filePath(shown, cwd);
  const imported = finishImport(name, map.value?.map ?? NO_MAP, sheets.value, rotariesIn(out));
  for (const line of importSummary(name, imported)) lines.result(printable(line));
  for (const fault of imported.faults) lines.remark(printable(faultLine(name, fault)));
  const inputs = [file, ...(options.map === undefined ? [] : [options.map])].map((each) =>
    filePath(each, cwd),
  );
  const folder = { path: out, shown, inputs, overwrite: options.overwrite === true };
  const written = imported.files.length > 0 && writeFiles(imported.files, folder, lines);
  if (written) tellOthers(imported, out, lines);
  if (imported.open && options.map === undefined) writeMap(name, imported, dirname(out), lines);
  if (imported.files.length === 0) lines.remark('No catalog is written: no row could be taken.');
  if (!written) return UNUSABLE;
  return imported.open || imported.faults.length > 0 ? OPEN : 0;
}

const stem = (name: string): string => name.slice(0, name.length - extname(name).length) || name;

function mapOf(file: string | undefined, cwd: string): Reading<MapReading | null> {
  if (file === undefined) return { ok: true, value: null };
  const text = readFileText(filePath(file, cwd));
  if (text.ok) return readMap(text.value, file);
  return { ok: false, problems: text.problems.map((problem) => ({ ...problem, file })) };
}

/** The sheets of the file, each taken with the map; a file that is no table is a problem. */
async function sheetsOf(
  file: string,
  path: string,
  map: ImportMap,
): Promise<Reading<readonly ImportedSheet[]>> {
  try {
    if (statSync(path).isDirectory())
      return wholeFile(file, 'this is a folder', 'expected a table, as CSV or .xlsx');
    if (!isWorkbook(path)) {
      const importer = sheetImporter(null, map);
      for await (const row of csvRows(createReadStream(path))) importer.row(row);
      return { ok: true, value: [importer.end()] };
    }
    if (statSync(path).size > LARGEST_WORKBOOK)
      return wholeFile(file, 'the workbook is larger than 20 MB', 'expected a smaller one, or CSV');
    const sheets = await xlsxSheets(readFileSync(path));
    const imported = sheets.map(({ sheet, rows }) => {
      const importer = sheetImporter(sheet, map);
      for (const row of rows) importer.row(row);
      return importer.end();
    });
    return { ok: true, value: imported };
  } catch (error) {
    if (error instanceof UnreadableSheet) {
      const { found, expected, line } = error;
      return { ok: false, problems: [{ file, line, column: line === 0 ? 0 : 1, found, expected }] };
    }
    if (!(error instanceof Error) || !('code' in error)) throw error;
    return wholeFile(file, inWords(error, 'file'), 'expected a table, as CSV or .xlsx');
  }
}

/** Every workbook of today is a packed folder. */
function isWorkbook(path: string): boolean {
  const handle = openSync(path, 'r');
  try {
    const begin = Buffer.alloc(4);
    readSync(handle, begin, 0, 4, 0);
    return begin.toString('latin1') === 'PK\u0003\u0004';
  } finally {
    closeSync(handle);
  }
}

/** What the map says of sheets and columns that are not there. */
function strangersIn(
  sheets: readonly ImportedSheet[],
  { map, columnProblem }: MapReading,
): readonly Problem[] {
  return map.sheets.flatMap(({ sheet, columns }, at) => {
    const own = sheets.find(({ plan }) => plan.sheet === sheet);
    const missing =
      own === undefined ? columns.map(({ heading }, index) => ({ index, heading })) : own.plan.strangers;
    return missing.map(({ index }) =>
      columnProblem(
        at,
        index,
        'is not the heading of that column in the table',
        'expected it as it stands there',
      ),
    );
  });
}

/** Ids of rotaries that the folder has already: machines of this table may come with one. */
function rotariesIn(out: string): ReadonlySet<string> {
  const reading = isFolder(out) ? readCatalog([out]) : null;
  return new Set(reading?.ok ? reading.value.rotaries.map(({ id }) => id) : []);
}

/** An import before may have left files that have the same rows. */
function tellOthers({ files }: Imported, out: string, lines: Lines): void {
  const others = catalogFiles(out).map((path) => basename(path));
  const strange = others.filter((name) => !files.some((each) => each.name === name));
  if (strange.length > 0)
    lines.remark(printable(`Beside them stand, and are read too: ${strange.join(', ')}.`));
}

/** A map is never replaced: somebody may have written into it. */
function writeMap(name: string, imported: Imported, folder: string, lines: Lines): void {
  const path = join(folder, `${stem(name)}.map.yaml`);
  const text = mapText(name, NO_MAP, imported.currency, imported.sheets);
  const writing = writeFileText(path, text, { overwrite: false, makeFolders: true });
  if (writing.ok) {
    lines.result(
      printable(`What has to be said is unknown in ${path}: write it there, and give it back with --map.`),
    );
  } else if (writing.why === 'exists') {
    lines.remark(
      printable(`There is a map already, and it is left as it is: give it back with --map ${path}.`),
    );
  } else lines.remark(printable(`The map ${path} is not written: ${writing.words}.`));
}
