import { catalogFiles, readCatalog } from '../catalog/read.ts';
import { describeProblem } from '../documents/problem.ts';
import { catalogTable } from '../importing/catalog-table.ts';
import { filePath } from './file-path.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { writeFiles } from './write-files.ts';

interface TableOptions {
  readonly out?: string;
  readonly overwrite?: boolean;
}

/**
 * `fivesides catalog to-csv`: the rotaries and the machines of a catalog as tables that `catalog import` reads back. Exit
 * code 0, or 2 where the catalog cannot be read or nothing is written.
 */
export async function catalogToCsv(
  folders: readonly string[],
  options: TableOptions,
  lines: Lines = PROCESS_LINES,
  cwd: string = process.cwd(),
): Promise<number> {
  const paths = folders.map((folder) => filePath(folder, cwd));
  const reading = readCatalog(paths);
  if (!reading.ok) {
    for (const problem of reading.problems) lines.remark(describeProblem(problem));
    return UNUSABLE;
  }
  const catalog = reading.value;
  const files = (['rotaries', 'machines'] as const).flatMap((list) => {
    const text = catalogTable(catalog, list);
    return text === null ? [] : [{ name: `${list}.csv`, text, rows: catalog[list].length }];
  });
  const shown = options.out ?? '.';
  const inputs = paths.flatMap(catalogFiles);
  const folder = { path: filePath(shown, cwd), shown, inputs, overwrite: options.overwrite === true };
  if (!writeFiles(files, folder, lines)) return UNUSABLE;
  return 0;
}
