import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { describeProblem, type Reading } from '../../src/documents/problem.ts';
import { type AnswersFile, readAnswers } from '../../src/questions/read-answers.ts';

export const DEMO_FOLDER = fileURLToPath(new URL('../../catalog-demo/', import.meta.url));

/** Every YAML file of the demo, answers among them. */
export const demoFiles = (): readonly string[] =>
  readdirSync(DEMO_FOLDER).filter((name) => name.endsWith('.yaml'));

/** Every shop of the demo, by what its file is called. Example: 'shop-own-mill' */
export const demoShops = (): readonly string[] =>
  demoFiles().flatMap((file) => /^(.+)\.answers\.yaml$/.exec(file)?.[1] ?? []);

/** The demo catalog; throws with every problem where it cannot be read. */
export const demoCatalog = (): Catalog => readingOf(readCatalog([DEMO_FOLDER]));

/** The answers of a demo shop, held against the catalog where one is given. Throws like `demoCatalog`. Example: demoAnswers('shop-own-mill') */
export const demoAnswers = (shop: string, catalog?: Catalog): AnswersFile =>
  readingOf(readAnswers(join(DEMO_FOLDER, `${shop}.answers.yaml`), undefined, catalog));

function readingOf<Value>(reading: Reading<Value>): Value {
  if (!reading.ok) throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value;
}
