import { existsSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the demo catalog: beside the program, wherever that was installed. */
export function demoCatalog(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (;;) {
    const candidate = join(folder, 'catalog-demo');
    // as seen from here, so that what is printed does not hang on where the program lies
    if (existsSync(candidate)) return relative(process.cwd(), candidate);
    const parent = dirname(folder);
    if (parent === folder) throw new Error('the demo catalog is missing from the installation');
    folder = parent;
  }
}
