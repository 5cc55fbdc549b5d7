import { catalogFiles } from '../catalog/read.ts';
import { sameFile } from '../documents/same-file.ts';

/** The file that a decision reads and that writing to `out` would replace, as it is called; null where there is none. */
export function ownInput(out: string, answers: string, folders: readonly string[]): string | null {
  const read = answers === '-' ? [] : [answers];
  const files = [...read, ...folders.flatMap(catalogFiles)];
  return files.find((file) => sameFile(out, file)) ?? null;
}
