import { expect, test } from 'vitest';
import { readCatalog } from '../../src/catalog/read.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Kept } from '../../src/session/kept.ts';
import type { Place } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { createWorld } from '../../src/session/world.ts';
import { KEY, start, type Terminal, typedAhead } from './harness.ts';
import { savedBy, smallCatalog } from './interview.ts';

const LONGEST = 480_000;
const catalog = smallCatalog();

/** Basic facts: what is typed line by line, and the keys. */
const BASICS: readonly (readonly [line: string, keys: string])[] = [
  ['mm', '1\r'],
  ['none', '1\r'],
  ['Hinge', 'Hinge\r'],
  ['block', '1\r'],
  ['90 x 60 x 55', '90 x 60 x 55\r'],
  ['top, sides', '1 2 \r'],
  ['go on', KEY.enter],
  ['5000', '5000\r'],
  ['3000', '3000\r'],
];

/** The last basic fact. */
const LAST = '3500';

/** What the same lines come to without a terminal. */
function meant(lines: readonly string[]): { readonly at: Place; readonly kept: Kept } {
  const read = readCatalog([catalog]);
  if (!read.ok) throw new Error('the catalog cannot be read');
  const world = createWorld(read.value, decide, askingOf);
  let session = newSession(world, [], null);
  for (const text of lines) {
    [session] = step(session, { type: 'reply', text }, world);
    if (session.note?.kind === 'error') throw new Error(`${text}: ${session.note.why}`);
  }
  return session;
}

async function begun(): Promise<Terminal> {
  const terminal = start({ catalog, needed: true });
  await terminal.waitFor('Begin a new interview');
  terminal.send(KEY.enter);
  await terminal.waitFor('0 answered, basic facts first');
  return terminal;
}

test('keys typed ahead answer the questions that come, whatever has to be worked out first', {
  timeout: LONGEST,
}, async () => {
  const terminal = await begun();
  const open = meant([...BASICS.map(([line]) => line), LAST, 'not sure', 'not sure']);
  terminal.send(typedAhead([...BASICS.map(([, keys]) => keys), `${LAST}\r`, KEY.ctrlN, KEY.ctrlN].join('')));
  await terminal.waitFor(/11 answered, about/);
  await terminal.waitFor('Asked now because');
  expect(savedBy(terminal).answers).toEqual(open.kept);
});

test('an answer is saved before it is known what comes next; Esc goes back to it', {
  timeout: LONGEST,
}, async () => {
  const terminal = await begun();
  terminal.send(typedAhead(BASICS.map(([, keys]) => keys).join('')));
  await terminal.waitFor('1 basic fact to go');
  // both in one read, so that nothing can be worked out between them
  terminal.send(`${LAST}\r${KEY.escape}`);
  await terminal.waitFor(/9 answered, .*3500/s);
  expect(savedBy(terminal).answers).toEqual(meant([...BASICS.map(([line]) => line), LAST]).kept);
});

test('one key asks everything, and again only what is needed; the interview keeps it', {
  timeout: LONGEST,
}, async () => {
  const terminal = await begun();
  terminal.send('1\r');
  await terminal.waitFor('1 answered, basic facts first');
  terminal.send('e');
  await terminal.waitFor('every question is asked');
  await terminal.waitFor('question 2');
  expect(savedBy(terminal)).toMatchObject({ asks: 'all' });
  terminal.send('\u000f');
  await terminal.waitFor('only what can still change the result');
  expect(savedBy(terminal)).toMatchObject({ asks: 'needed' });
});
