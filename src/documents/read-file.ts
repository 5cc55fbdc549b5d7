import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { decodeText, inMegabytes, LARGEST_FILE } from './decode-text.ts';
import { type Reading, wholeFile } from './problem.ts';

/** What standard input is called in messages. */
export const STANDARD_INPUT = '(standard input)';

/** The text of a file, or of standard input for `-`. Never throws; at most 8 MB, or `most` bytes, are ever read. */
export function readFileText(path: string, most: number = LARGEST_FILE): Reading<string> {
  const file = path === '-' ? STANDARD_INPUT : path;
  let handle: number | null = null;
  try {
    handle = path === '-' ? 0 : openSync(path, 'r');
    const stat = fstatSync(handle);
    if (stat.isDirectory()) return wholeFile(file, 'this is a folder', 'expected a file');
    if (stat.isFile() && stat.size > most) {
      const expected = `expected a file of at most ${inMegabytes(most)}`;
      return wholeFile(file, `the file has ${(stat.size / 1024 / 1024).toFixed(1)} MB`, expected);
    }
    return decodeText(readAtMost(handle, most + 1), file, most);
  } catch (error) {
    return wholeFile(file, inWords(error, 'file'), 'expected a file that can be read');
  } finally {
    if (handle !== null && handle !== 0) closeSync(handle);
  }
}

function readAtMost(handle: number, most: number): Uint8Array {
  const chunks: Buffer[] = [];
  let total = 0;
  while (total < most) {
    const chunk = Buffer.allocUnsafe(Math.min(65536, most - total));
    const count = readSome(handle, chunk);
    if (count === 0) break;
    chunks.push(chunk.subarray(0, count));
    total += count;
  }
  return Buffer.concat(chunks);
}

/** Bytes read, 0 at the end. A pipe that has nothing yet says so by an error: wait and ask again. */
function readSome(handle: number, into: Buffer): number {
  for (;;) {
    try {
      return readSync(handle, into, 0, into.length, null);
    } catch (error) {
      const code = codeOf(error);
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';

/** Why the system would not let us read a file or folder, in words. */
export function inWords(error: unknown, what: 'file' | 'folder'): string {
  const words: Record<string, string> = {
    ENOENT: `there is no such ${what}`,
    ENOTDIR: `there is no such ${what}`,
    EACCES: `the ${what} may not be read by you`,
    EPERM: `the ${what} may not be read by you`,
    EISDIR: 'this is a folder',
    ELOOP: 'the link leads in a circle',
    ENAMETOOLONG: 'the name is too long',
    ERR_INVALID_ARG_VALUE: `the name holds a character that no ${what} name has`,
  };
  const code = codeOf(error);
  return words[code] ?? `the ${what} cannot be read${code === '' ? '' : ` (${code})`}`;
}
