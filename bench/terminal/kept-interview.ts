import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { readCatalog } from '../../src/catalog/read.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { opened } from '../../src/session/opened.ts';
import { savedOf } from '../../src/session/saved.ts';
import { newSession } from '../../src/session/start.ts';
import { createWorld } from '../../src/session/world.ts';

export const DEMO = resolve('catalog-demo');
export const DEMO_ANSWERS = join(DEMO, 'shop.answers.yaml');

/** Arguments that go on with an interview on the whole demo shop, at its review; it is kept in the folder. */
export function keptInterview(program: string, folder: string): readonly string[] {
  const file = join(folder, 'kept.json');
  const catalog = readCatalog([DEMO]);
  const answers = readAnswers(DEMO_ANSWERS);
  if (!catalog.ok || !answers.ok) throw new Error('the demo cannot be read');
  const world = createWorld(catalog.value, decide);
  const session = opened(answers.value, newSession(world, [DEMO], 'mm'), world);
  writeFileSync(file, JSON.stringify(savedOf(session)));
  return [program, '--session', file, '--resume'];
}

/** The last row of every screen ends with it. */
export const LAST_WORDS = '? help';
