import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { sync as writeFileAtomicSync } from 'write-file-atomic';

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
 * Writes a text to a file as a whole: whatever happens, the file holds the old text or the new one. What the
 * system refuses is said in words; nothing else is caught.
 */
export function writeFileText(path: string, text: string, options: WriteOptions): Writing {
  try {
    if (existsSync(path)) {
      const there = statSync(path);
      if (there.isDirectory()) return failed('that is a folder');
      // a device or a pipe would be replaced by a file
      if (!there.isFile()) return failed('that is no ordinary file');
      if (!options.overwrite) return { ok: false, why: 'exists' };
    }
    if (options.makeFolders === true) mkdirSync(dirname(path), { recursive: true });
    writeFileAtomicSync(path, text);
    return { ok: true };
  } catch (error) {
    return failed(inWords(error));
  }
}

const failed = (words: string): Writing => ({ ok: false, why: 'failed', words });

function inWords(error: unknown): string {
  if (!(error instanceof Error) || !('code' in error)) throw error;
  const code = String(error.code);
  const words: Record<string, string> = {
    ENOENT: 'there is no such folder',
    ENOTDIR: 'there is no such folder',
    EACCES: 'you may not write there',
    EPERM: 'you may not write there',
    EROFS: 'nothing can be written there',
    ENOSPC: 'the disk is full',
    ENAMETOOLONG: 'the name is too long',
    ERR_INVALID_ARG_VALUE: 'the name holds a character that no file name has',
  };
  return words[code] ?? `it cannot be written (${code})`;
}
