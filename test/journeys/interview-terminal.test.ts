import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type IPty, spawn } from '@lydell/node-pty';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { blockReplies, SHOP_REPLIES } from '../session/talk.ts';
import { buildProgram, emptyFolder } from './interview-program.ts';

let program = '';
beforeAll(async () => {
  program = await buildProgram();
});

const running: IPty[] = [];
afterEach(() => {
  for (const each of running.splice(0)) {
    try {
      each.kill('SIGKILL');
    } catch {
      // it has ended by itself
    }
  }
});

const LONGEST_MS = 60_000;

/** The program in a real terminal of 80 x 24: what it wrote, byte for byte, and how it ended. */
function inTerminal(
  env: Readonly<Record<string, string>> = {},
  args: readonly string[] = ['--plain', '--ask-all'],
) {
  const cwd = emptyFolder();
  const { CI: _, ...own } = process.env;
  const terminal = spawn(process.execPath, [program, ...args, '--session', 'mine.json'], {
    cols: 80,
    rows: 24,
    cwd,
    env: { ...own, TERM: 'xterm-256color', HOME: cwd, ...env },
  });
  running.push(terminal);
  let output = '';
  const waiting: (() => void)[] = [];
  terminal.onData((data) => {
    output += data;
    for (const look of waiting) look();
  });
  const ended = new Promise<number>((resolve) => {
    terminal.onExit(({ exitCode }) => resolve(exitCode));
  });
  /** Until the text has come out after everything that was seen before. */
  let seen = 0;
  const waitFor = (text: string) =>
    new Promise<void>((resolve, reject) => {
      const timer = setTimeout(
        () => reject(new Error(`"${text}" did not come; there is:\n${output}`)),
        LONGEST_MS,
      );
      const look = () => {
        const found = output.indexOf(text, seen);
        if (found < 0) return;
        seen = found + text.length;
        clearTimeout(timer);
        waiting.splice(waiting.indexOf(look), 1);
        resolve();
      };
      waiting.push(look);
      look();
    });
  return { cwd, terminal, ended, waitFor, output: () => output };
}

test('requirement 23: a whole interview in a terminal ends with the result, and writes no escape sequence', async () => {
  const { terminal, ended, waitFor, output } = inTerminal();
  await waitFor('Units > ');
  for (const line of ['mm', 'none', ...blockReplies('Lock gate hinge'), ...SHOP_REPLIES]) {
    terminal.write(`${line}\r`);
    await waitFor(' > ');
  }
  terminal.write('\r');
  await waitFor('The outcome: recommended');
  terminal.write('no\r');
  expect(await ended).toBe(0);
  expect(output()).not.toContain('\u001b');
});

test('Ctrl-C leaves at once with 130, and everything answered is kept', async () => {
  const { cwd, terminal, ended, waitFor } = inTerminal();
  await waitFor('Units > ');
  terminal.write('mm\r');
  await waitFor('Your own mill > ');
  terminal.write('no\u0003');
  await waitFor('Your answers are in');
  expect(await ended).toBe(130);
  const { answers } = JSON.parse(readFileSync(join(cwd, 'mine.json'), 'utf8'));
  expect(answers).toEqual({ shop: { units: { from: 'typed', value: 'mm' } }, parts: [] });
});

test('Ctrl-D says that the interview is unfinished and leaves with 4', async () => {
  const { terminal, ended, waitFor } = inTerminal();
  await waitFor('Units > ');
  terminal.write('mm\r');
  await waitFor('Your own mill > ');
  terminal.write('\u0004');
  await waitFor('The interview is unfinished.');
  expect(await ended).toBe(4);
});

test('lines that are typed ahead are shown where they are read', async () => {
  const { terminal, ended, waitFor, output } = inTerminal();
  await waitFor('Units > ');
  terminal.write('mm\rnone\rLock gate hinge\rquit\r');
  expect(await ended).toBe(4);
  await waitFor('Name: Lock gate hinge');
  expect(output()).toMatch(/Name > Lock gate hinge\r?\n(.*\r?\n)?Name: Lock gate hinge/);
});

test('requirement 23: a dumb terminal is served when simple screens are asked for', async () => {
  const { terminal, ended, waitFor } = inTerminal({ TERM: 'dumb', ACCESSIBLE: '1' });
  await waitFor('Units > ');
  terminal.write('quit\r');
  expect(await ended).toBe(4);
});

test('a dumb terminal alone is told how to go on: exit code 2', async () => {
  const { ended, waitFor } = inTerminal({ TERM: 'dumb' }, []);
  await waitFor('--plain');
  expect(await ended).toBe(2);
});
