import { join } from 'node:path';
import { printable } from '../documents/printable.ts';
import { sameFile } from '../documents/same-file.ts';
import { thereAt } from '../documents/there-at.ts';
import { LINK_THERE, notWritten, writeFileTexts } from '../documents/write-file.ts';
import type { Lines } from './lines.ts';

export interface FileToWrite {
  readonly name: string;
  readonly text: string;
  readonly rows: number;
}

export interface Folder {
  readonly path: string;
  /** as the user calls it */
  readonly shown: string;
  /** files that were read, and must not be replaced */
  readonly inputs: readonly string[];
  readonly overwrite: boolean;
}

/** Writes every file into the folder or, where one is in the way, none; whether that went well. */
export function writeFiles(files: readonly FileToWrite[], folder: Folder, lines: Lines): boolean {
  for (const { name } of files) {
    const why = inTheWay(join(folder.path, name), folder);
    if (why === null) continue;
    lines.remark(printable(`${join(folder.shown, name)}: ${why}. Nothing is written.`));
    return false;
  }
  const writing = writeFileTexts(
    files.map(({ name, text }) => ({
      path: join(folder.path, name),
      text,
      overwrite: folder.overwrite,
      makeFolders: true,
    })),
  );
  if (!writing.ok) {
    lines.remark(printable(`${folder.shown}: ${notWritten(writing)}. Nothing is written.`));
    return false;
  }
  for (const { name, rows } of files)
    lines.result(printable(`Written: ${join(folder.shown, name)}, ${rows} ${rows === 1 ? 'row' : 'rows'}.`));
  return true;
}

function inTheWay(path: string, { inputs, overwrite }: Folder): string | null {
  const there = thereAt(path);
  if (there === null) return null;
  if (there.isSymbolicLink()) return LINK_THERE;
  if (inputs.some((input) => sameFile(input, path))) return 'it is read here itself';
  return overwrite ? null : 'it is there already: say --overwrite, or --out with another folder';
}
