import { homedir } from 'node:os';
import { resolve } from 'node:path';

/** Where a file is that was named by a user: from the folder of the program on, or from home (`~/parts.csv`). */
export const filePath = (file: string, cwd: string): string =>
  resolve(cwd, file.replace(/^~(?=\/|$)/, homedir()));
