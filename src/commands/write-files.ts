import { join } from 'node:path';
import { printable } from '../documents/printable.ts';
import { notWritten, writeFileTexts } from '../documents/write-file.ts';
import { type Guard, inTheWay } from './in-the-way.ts';
import type { Lines } from './lines.ts';

export interface FileToWrite {
  readonly name: string;
  readonly text: string;
  readonly rows: number;
}

export interface Folder extends Guard {
  readonly path: string;
  /** as the user calls it */
  readonly shown: string;
}

/** Writes every file into the folder or, where one is in the way, none; whether that went well. */
export function writeFiles(files: readonly FileToWrite[], folder: Folder, lines: Lines): boolean {
  for (const { name } of files) {
    const why = inTheWay(join(folder.path, name), folder, '--out with another folder');
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
