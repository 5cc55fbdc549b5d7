import { randomInt } from 'node:crypto';
import {
  chmodSync,
  chownSync,
  closeSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';

/** A file, and the whole text that it is to hold. */
export interface WholeFile {
  readonly path: string;
  readonly text: string;
}

/**
 * Gives each file its text. Whatever happens, each holds its old text or its new one; where the texts do not all find
 * room, or a folder refuses one, none is touched. Throws what the system says.
 */
export function replaceFiles(files: readonly WholeFile[]): void {
  const written: { readonly path: string; readonly beside: string }[] = [];
  try {
    for (const { path, text } of files) {
      const beside = `${path}.${randomInt(2 ** 32)}`;
      written.push({ path, beside });
      writeNew(beside, text, path);
    }
    // all of them are on the disk: what is left is naming them
    for (const { path, beside } of written) renameSync(beside, path);
  } finally {
    for (const { beside } of written) rmSync(beside, { force: true });
  }
}

/** A new file with the rights of another one, if that is there; on the disk when this is over. */
function writeNew(path: string, text: string, like: string): void {
  const rights = statSync(like, { throwIfNoEntry: false });
  // not through a link or into a file that somebody has put there
  const handle = openSync(path, 'wx', rights?.mode);
  try {
    // goes on where the system took only a part, as it does on a disk that is nearly full, until it refuses
    writeFileSync(handle, Buffer.from(text, 'utf8'));
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  if (rights === undefined) return;
  // past the mask of new files
  chmodSync(path, rights.mode);
  const { uid, gid } = statSync(path);
  if (uid !== rights.uid || gid !== rights.gid) keepOwner(path, rights.uid, rights.gid);
}

/** Only some may give a file away; whoever may not has a file of their own then. */
function keepOwner(path: string, uid: number, gid: number): void {
  try {
    chownSync(path, uid, gid);
  } catch {
    // the text is what counts
  }
}
