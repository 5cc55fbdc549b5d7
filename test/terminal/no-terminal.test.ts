import { spawnSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DEMO, emptyFolder, KEY, PROGRAM, start } from './harness.ts';
import { question, smallCatalog } from './interview.ts';

const catalog = smallCatalog();
const RUN = `'${process.execPath}' '${PROGRAM}' --catalog '${catalog}' --session kept.json`;
/** Far more than it takes, and far less than for ever. */
const HANGS_MS = 60_000;

/** A command of the shell that is in a real terminal; its standard output and its standard error go to files unless they are piped. */
async function shell(cwd: string, line: string, env: Readonly<Record<string, string>> = {}) {
  const terminal = start({ cwd, command: ['bash', '--norc', '--noprofile', '-c', line], env });
  const { code } = await terminal.ended(HANGS_MS);
  return { code, terminal, text: terminal.lines().join('\n') };
}

const says = (text: string): void => {
  const words = text.replaceAll(/\s+/g, ' ');
  expect(words).toContain('the interview needs a terminal');
  expect(words).toContain('fivesides decide ANSWERS');
  expect(words).toContain('--plain');
};

describe('requirement 21: where there is no terminal it says how to go on, at once: 2', () => {
  test.each([
    ['nothing to read from and nobody to write to', [], {}],
    ['an input that goes on by itself', ['--resume'], {}],
    ['--no-input', ['--no-input'], {}],
    ['--no-input with --plain', ['--no-input', '--plain'], {}],
    ['TERM=dumb', [], { TERM: 'dumb' }],
    ['CI=true', [], { CI: 'true' }],
  ])('%s', (_, args, env) => {
    const cwd = emptyFolder();
    const run = spawnSync(process.execPath, [PROGRAM, '--catalog', DEMO, '--session', 'kept.json', ...args], {
      cwd,
      env: { ...process.env, ...env },
      input: '1\n'.repeat(10),
      encoding: 'utf8',
      timeout: HANGS_MS,
    });
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    says(run.stderr);
    expect(readdirSync(cwd)).toEqual([]);
  });

  test.each([
    ['</dev/null', `${RUN} </dev/null 2>errors`, {}],
    ['TERM=dumb', `${RUN} 2>errors`, { TERM: 'dumb' }],
    ['--no-input', `${RUN} --no-input 2>errors`, {}],
  ])('in a terminal, %s: nothing is written onto it', async (_, line, env) => {
    const cwd = emptyFolder();
    const { code, terminal, text } = await shell(cwd, `${line}; code=$?; cat errors >&2; exit $code`, env);
    expect(code).toBe(2);
    says(text);
    expect(terminal.raw).not.toContain('\u001b');
    expect(readdirSync(cwd)).toEqual(['errors']);
  });

  test('in a terminal, | cat: the pipe stays empty', async () => {
    const cwd = emptyFolder();
    writeFileSync(join(cwd, 'input'), '1\n');
    const line = `${RUN} | cat >written; echo "code \${PIPESTATUS[0]}, $(wc -c <written) bytes."`;
    const { terminal, text } = await shell(cwd, line);
    expect(text).toMatch(/code 2, +0 bytes\./);
    says(text);
    expect(terminal.raw).not.toContain('\u001b');
  });
});

test('requirement 21: CI=true in a terminal still asks on the screen', async () => {
  const terminal = start({ catalog, env: { CI: 'true', CONTINUOUS_INTEGRATION: '1' } });
  await terminal.waitFor('Begin a new interview');
  terminal.send(KEY.enter);
  await terminal.waitFor(question(1));
  terminal.send(KEY.down);
  await terminal.waitFor(/^❯ inch/m);
  terminal.send(KEY.enter);
  await terminal.waitFor(question(2));
});
