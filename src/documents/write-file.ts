import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { replaceFiles, type WholeFile } from './replace-files.ts';
import { thereAt } from './there-at.ts';

export type Writing =
  | { readonly ok: true }
  /** it is there already, and was not to be replaced */
  | { readonly ok: false; readonly why: 'exists' }
  /** one clause on why it could not be written */
  | { readonly ok: false; readonly why: 'failed'; readonly words: string };

/** Why a file was not written, in a clause. */
export const notWritten = (writing: Exclude<Writing, { ok: true }>): string =>
  writing.why === 'exists' ? 'it is there already' : writing.words;

export interface WriteOptions {
  /** a file that is there is replaced */
  readonly overwrite: boolean;
  /** folders that are missing are made */
  readonly makeFolders?: boolean;
}

/**
 * Writes a text to a file as a whole: whatever happens, the file holds the old text or the new one. A link is not
 * written through. What the system refuses is said in words; nothing else is caught.
 */
export const writeFileText = (path: string, text: string, options: WriteOptions): Writing =>
  writeFileTexts([{ path, text, ...options }]);

/** Writes several files, all or none of them. */
export function writeFileTexts(files: readonly (WholeFile & WriteOptions)[]): Writing {
  try {
    for (const { path, ...options } of files) {
      const refused = refusedAt(path, options);
      if (refused !== null) return refused;
    }
    for (const { path, makeFolders } of files) if (makeFolders === true) makeFolder(dirname(path));
    replaceFiles(files);
    return { ok: true };
  } catch (error) {
    return failed(inWords(error));
  }
}

/**
 * Makes a folder, and those above it. One by one: `recursive` never returns where a folder refuses with ENOENT (/proc), and
 * calls a disk that is read only a missing folder.
 */
function makeFolder(path: string): void {
  if (isFolder(path)) return;
  const above = dirname(path);
  if (above !== path) makeFolder(above);
  mkdirSync(path);
}

/** Whether a folder is there, whatever else is. */
export const isFolder = (path: string): boolean => existsSync(path) && statSync(path).isDirectory();

/** Why what is at a path is left as it is; null where nothing stands against writing there. */
function refusedAt(path: string, options: WriteOptions): Exclude<Writing, { ok: true }> | null {
  const there = thereAt(path);
  if (there === null) {
    const hasFolder = options.makeFolders === true || existsSync(dirname(path));
    return hasFolder ? null : failed('there is no such folder');
  }
  if (there.isSymbolicLink()) return failed(LINK_THERE);
  if (there.isDirectory()) return failed('that is a folder');
  // a device or a pipe would be replaced by a file
  if (!there.isFile()) return failed('that is no ordinary file');
  return options.overwrite ? null : { ok: false, why: 'exists' };
}

/** What is said of a symbolic link where a file is to be written. */
export const LINK_THERE = 'a link is there, and is not written through';

const failed = (words: string): Exclude<Writing, { ok: true }> => ({ ok: false, why: 'failed', words });

function inWords(error: unknown): string {
  if (!(error instanceof Error) || !('code' in error)) throw error;
  const code = String(error.code);
  const words: Record<string, string> = {
    ENOENT: 'there is no such folder',
    ENOTDIR: 'there is no such folder',
    EEXIST: 'a file is where its folder would have to be',
    EACCES: 'you may not write there',
    EPERM: 'you may not write there',
    EROFS: 'nothing can be written there',
    ENOSPC: 'the disk is full',
    EDQUOT: 'your share of the disk is full',
    EFBIG: 'it would be larger than a file may be there',
    ENAMETOOLONG: 'the name is too long',
    ERR_INVALID_ARG_VALUE: 'the name holds a character that no file name has',
  };
  return words[code] ?? `it cannot be written (${code})`;
}
