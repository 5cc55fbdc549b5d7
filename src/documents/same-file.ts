import { statSync } from 'node:fs';

/**
 * Whether two paths lead to the same file: under another name, through a symbolic link, or by a hard link. Of a path
 * that leads nowhere: no.
 */
export function sameFile(one: string, other: string): boolean {
  const [a, b] = [identity(one), identity(other)];
  return a !== null && a === b;
}

function identity(path: string): string | null {
  try {
    const { dev, ino } = statSync(path, { bigint: true });
    return `${dev}:${ino}`;
  } catch {
    return null;
  }
}
