import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the demo catalog: beside the program, wherever that was installed. */
export function demoCatalog(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (;;) {
    const candidate = join(folder, 'catalog-demo');
    if (existsSync(candidate)) return candidate;
    const parent = dirname(folder);
    if (parent === folder) throw new Error('the demo catalog is missing from the installation');
    folder = parent;
  }
}
