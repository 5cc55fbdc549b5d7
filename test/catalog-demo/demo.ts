import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { describeProblem } from '../../src/documents/problem.ts';

export const DEMO_FOLDER = fileURLToPath(new URL('../../catalog-demo/', import.meta.url));

/** Every YAML file of the demo, answers among them. */
export const demoFiles = (): readonly string[] =>
  readdirSync(DEMO_FOLDER).filter((name) => name.endsWith('.yaml'));

/** The demo catalog; throws with every problem where it cannot be read. */
export function demoCatalog(): Catalog {
  const reading = readCatalog([DEMO_FOLDER]);
  if (!reading.ok) throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value;
}
