import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { emptyFolder, KEY, PROGRAM, type Terminal } from './harness.ts';
import { answered, begun, HINGE, settled, smallCatalog, turnsOf, undecided } from './interview.ts';

const catalog = smallCatalog();
const TURNS = turnsOf(HINGE, undecided(catalog));
const LONGEST = 480_000;

function once<Result>(work: () => Result): () => Result {
  let done: { readonly result: Result } | undefined;
  return () => {
    done ??= { result: work() };
    return done.result;
  };
}

/** What the same answers give when they are typed line by line. */
const byLines = once((): string => {
  const cwd = emptyFolder();
  const lines = [...TURNS.map(({ line }) => line), 'export decision.json', 'quit'];
  const args = [PROGRAM, '--catalog', catalog, '--session', 'kept.json', '--ask-all', '--plain'];
  const { stderr } = spawnSync(process.execPath, args, {
    cwd,
    input: `${lines.join('\n')}\n`,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  return readFileSync(join(cwd, 'decision.json'), 'utf8');
});

const VIEWS = [
  ['w', 'Every check'],
  ['n', 'Why not another one'],
  ['c', 'Side by side'],
  ['s', 'How it was decided'],
  ['p', 'Papers'],
] as const;

async function everyView(terminal: Terminal): Promise<void> {
  for (const [key, title] of VIEWS) {
    terminal.send(key);
    await terminal.waitFor(title);
    await settled(terminal);
    await terminal.press(KEY.down, KEY.up);
    expect(terminal.text()).toContain(title);
  }
}

/** From the list of papers: where to, and until it is said that it is there. */
async function written(terminal: Terminal, row: number, file: string): Promise<void> {
  await terminal.waitFor('Papers');
  terminal.send(`${row}\r`);
  await terminal.waitFor('Where to?');
  terminal.send(`${file}\r`);
  await terminal.waitFor(`in ${file}.`);
}

describe('requirements 2 and 23: from the start to the papers, which are those of the line mode', () => {
  test.each([
    [60, 20],
    [80, 24],
    [120, 40],
  ])('at %i×%i', { timeout: LONGEST }, async (columns, rows) => {
    const terminal = await begun({ columns, rows, catalog });
    await answered(terminal, TURNS);
    await terminal.waitFor('every question is answered');
    terminal.send('t');
    await terminal.waitFor('The answer');
    await settled(terminal);
    await everyView(terminal);
    await written(terminal, 1, 'why.md');
    await written(terminal, 2, 'decision.json');
    terminal.send('q');
    const { code } = await terminal.ended();
    expect(code).toBe(4);
    expect(terminal.faults).toEqual([]);
    expect(readFileSync(join(terminal.cwd, 'why.md'), 'utf8')).toMatch(/^# /);
    expect(readFileSync(join(terminal.cwd, 'decision.json'), 'utf8')).toBe(byLines());
    expect(terminal.lines().join('\n')).toContain('Your answers are in');
  });
});
