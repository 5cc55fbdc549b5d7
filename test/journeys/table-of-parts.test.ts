import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readCommand } from '../../src/commands/plain/command.ts';
import { type Disk, perform } from '../../src/commands/plain/perform.ts';
import { withParts } from '../../src/commands/read-table.ts';
import { SessionKeeper } from '../../src/commands/session-keeper.ts';
import { begun, go, type Talk, WORLD } from '../session/talk.ts';
import { lineByLine } from './line-shell.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fivesides-table-'));
  const rows = [
    'Name;Shape;Size (mm);Material',
    'Cleat;block;90 x 60 x 55;brass',
    'Pintle;cube;40 x 40 x 90;brass',
  ];
  writeFileSync(join(folder, 'list.csv'), `${rows.join('\r\n')}\r\n`);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (): string => join(folder, 'session.json');

const never = (): string => {
  throw new Error('nothing is exported here');
};

/** Lines typed into the line mode, with files in a folder of its own; what it printed. */
function typed(start: Talk, lines: readonly string[]) {
  const disk: Disk = {
    markdown: never,
    json: never,
    paper: never,
    // what was saved before is known to it, as to a run that goes on
    keeper: new SessionKeeper(file(), existsSync(file()) ? readFileSync(file(), 'utf8') : null),
    cwd: folder,
    warn: (sentence) => {
      throw new Error(sentence);
    },
  };
  const left = [...lines];
  return lineByLine(start.session, WORLD, {
    next: async () => {
      const line = left.shift();
      return line === undefined ? { end: 'input' } : { line, early: false };
    },
    perform: (effect, session) => perform(effect, session, WORLD, disk),
  });
}

const saved = () => JSON.parse(readFileSync(join(folder, 'session.json'), 'utf8'));

test('requirements 15 and 17: a table comes in line by line, its faults are told by cell, and undo takes it back', async () => {
  const { printed, session } = await typed(begun(), [
    'mm',
    'none',
    'parts list.csv',
    'undo',
    'undo',
    'undo',
    'undo',
  ]);
  const words = printed.replace(/\s+/g, ' ');
  expect(words).toContain(
    '2 parts are added: Cleat, Pintle. 1 fault: Pintle, Shape. What is wrong is left open',
  );
  expect(words).toContain('Row 3 (Pintle), Shape: "cube" is none of them: block, round');
  expect(words).toContain('Cleat and Pintle are taken out again.');
  expect(words).toContain('Units is open again');
  expect(words).toContain('There is nothing to take back.');
  expect(session.kept.shop).toEqual({});
  expect(saved().answers.shop).toEqual({});
});

test('what was taken is saved, and a file that is not there is told by name', async () => {
  const { printed } = await typed(begun(), ['mm', 'none', 'parts list.csv', 'parts other.csv']);
  expect(saved().answers.parts).toHaveLength(2);
  expect(printed.replace(/\s+/g, ' ')).toContain(
    'The table in other.csv is not read: there is no such file.',
  );
});

test('an interview begins with the parts of a table, or says why not', () => {
  const { session } = begun();
  const begins = withParts('list.csv', session, WORLD, folder);
  expect(begins.ok && begins.session.kept.parts).toHaveLength(2);
  const fails = withParts('session.txt', session, WORLD, folder);
  expect(fails).toEqual({ ok: false, why: 'The table in session.txt is not read: there is no such file.' });
  expect(go({ session, effects: [] }).session).toBe(session);
});

test.each([
  ['parts list.csv', true, 'read-table'],
  ['parts "my list.csv"', false, 'read-table'],
  ['parts remove list.csv', false, 'go'],
  ['parts', false, 'go'],
])('%j where free text is asked for (%j) asks for %s', (line, freeText, first) => {
  const command = readCommand(line, freeText);
  expect(command.kind === 'events' && command.events[0]?.type).toBe(first);
});
