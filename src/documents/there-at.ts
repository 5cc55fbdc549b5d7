import { lstatSync, type Stats } from 'node:fs';

/** What is at a path, a link itself and not what it leads to; null where there is nothing, or nothing can be there. */
export function thereAt(path: string): Stats | null {
  try {
    return lstatSync(path);
  } catch {
    // whoever reads or writes there is told why
    return null;
  }
}

/** Whether a symbolic link is at a path, wherever it leads. */
export const isLink = (path: string): boolean => thereAt(path)?.isSymbolicLink() === true;
