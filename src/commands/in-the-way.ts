import { sameFile } from '../documents/same-file.ts';
import { thereAt } from '../documents/there-at.ts';
import { LINK_THERE } from '../documents/write-file.ts';

/** What writing a file has to leave alone. */
export interface Guard {
  /** files that were read, and must not be replaced */
  readonly inputs: readonly string[];
  readonly overwrite: boolean;
}

/** Why a file may not be written where it is to be; null: nothing is in the way. `instead`: what else can be named. */
export function inTheWay(
  path: string,
  { inputs, overwrite }: Guard,
  instead = 'name another file',
): string | null {
  const there = thereAt(path);
  if (there === null) return null;
  if (there.isSymbolicLink()) return LINK_THERE;
  if (there.isDirectory()) return 'that is a folder';
  if (inputs.some((input) => sameFile(input, path))) return 'it is read here itself';
  return overwrite ? null : `it is there already: say --overwrite, or ${instead}`;
}
