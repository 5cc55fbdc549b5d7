import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isMap } from '../documents/fields/strict-map.ts';
import { parseDocument } from '../documents/parse-document.ts';
import { inOrder, type Problem, type Reading, wholeFile } from '../documents/problem.ts';
import { inWords, readFileText } from '../documents/read-file.ts';
import type { Catalog } from './catalog.ts';
import { filesCrossChecked, type ParsedFile } from './files-cross-checks.ts';
import { asCatalog, readRows } from './read-rows.ts';

/** A catalog, and the files that it was read from: where each value stands. */
export interface CatalogInFiles {
  readonly catalog: Catalog;
  readonly files: readonly ParsedFile[];
}

/**
 * Reads every YAML and JSON file that stands directly in the folders (not in folders below them) as one catalog;
 * answers files among them are passed over. Every problem of every file at once, with line and column; never throws.
 */
export function readCatalog(folders: readonly string[]): Reading<Catalog> {
  const reading = readCatalogFiles(folders);
  return reading.ok ? { ok: true, value: reading.value.catalog } : reading;
}

/** The same, with the files. */
export function readCatalogFiles(folders: readonly string[]): Reading<CatalogInFiles> {
  const problems: Problem[] = [];
  const parsed: ParsedFile[] = [];
  const order: string[] = [];
  for (const folder of folders) {
    const found = readFolder(folder);
    order.push(...found.files);
    parsed.push(...found.parsed);
    problems.push(...found.problems);
  }
  problems.push(...filesCrossChecked(parsed, problems.length === 0));
  const rows = parsed.map((each) => readRows(each));
  for (const each of rows) if (!each.ok) problems.push(...each.problems);
  if (problems.length > 0) return { ok: false, problems: inOrder(problems, order) };
  const catalog = asCatalog(rows.flatMap((each) => (each.ok ? [each.value] : [])));
  return { ok: true, value: { catalog, files: parsed } };
}

interface FolderReading {
  readonly files: readonly string[];
  readonly parsed: readonly ParsedFile[];
  readonly problems: readonly Problem[];
}

function readFolder(folder: string): FolderReading {
  const names = namesIn(folder);
  if (!names.ok) return { files: [], parsed: [], problems: names.problems };
  const parsed: ParsedFile[] = [];
  const problems: Problem[] = [];
  const files = names.value.map((name) => join(folder, name));
  for (const file of files) {
    const text = readFileText(file);
    const document = text.ok ? parseDocument(text.value, file) : text;
    if (!document.ok) problems.push(...document.problems);
    else if (!isAnswersFile(document.value.value)) parsed.push({ file, document: document.value });
  }
  if (parsed.length > 0 || problems.length > 0) return { files, parsed, problems };
  const none = wholeFile(
    folder,
    'the folder holds no catalog file',
    'expected a .yaml, .yml or .json file in it',
  );
  return { files, parsed, problems: none.ok ? [] : none.problems };
}

/** The files of a folder that are read as a catalog; none where it cannot be read. Example: 'shop' → ['shop/mills.yaml'] */
export function catalogFiles(folder: string): readonly string[] {
  const names = namesIn(folder);
  return names.ok ? names.value.map((name) => join(folder, name)) : [];
}

/** Names of the files that may hold rows, in the order of their names. */
function namesIn(folder: string): Reading<readonly string[]> {
  try {
    if (!statSync(folder).isDirectory()) {
      return wholeFile(folder, 'this is a file', 'expected the folder of a catalog');
    }
    const names = readdirSync(folder).filter((name) => {
      if (!/\.(ya?ml|json)$/i.test(name) || /\.answers\.(ya?ml|json)$/i.test(name)) return false;
      return !statSync(join(folder, name), { throwIfNoEntry: false })?.isDirectory();
    });
    return { ok: true, value: names.sort((one, other) => (one < other ? -1 : 1)) };
  } catch (error) {
    return wholeFile(folder, inWords(error, 'folder'), 'expected the folder of a catalog');
  }
}

const isAnswersFile = (value: unknown): boolean =>
  isMap(value) && typeof value.format === 'string' && value.format.startsWith('fivesides-answers/');
