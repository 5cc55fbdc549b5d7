import { join } from 'node:path';
import { readCatalog } from '../../../src/catalog/read.ts';
import { readAnswers } from '../../../src/questions/read-answers.ts';
import { decide } from '../../../src/rules/decide.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { opened } from '../../../src/session/opened.ts';
import { newSession } from '../../../src/session/start.ts';
import { createWorld } from '../../../src/session/world.ts';
import { FIXTURES } from './input.ts';

const reading = readCatalog([FIXTURES]);
if (!reading.ok) throw new Error('the catalog of the tests cannot be read');
const answers = readAnswers(join(FIXTURES, 'contract.answers.yaml'));
if (!answers.ok) throw new Error('the answers of the tests cannot be read');

export const SMALL_CATALOG = reading.value;
export const SMALL_SHOP = answers.value.answers;
const decided = new Map<string, Decision>();
/** The rules themselves, that decide once for each way of deciding, whatever is answered: thousands of screens hang on it. */
export const SMALL_WORLD = createWorld(SMALL_CATALOG, (_, catalog, { traces, ...options }) => {
  const key = JSON.stringify(options);
  const found = decided.get(key) ?? decide(SMALL_SHOP, catalog, { ...options, traces: true });
  decided.set(key, found);
  return found;
});
export const BLANK = newSession(SMALL_WORLD, [], null, 'all');
export const FILLED = opened(answers.value, BLANK, SMALL_WORLD);
