import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { commandOn, emptyFolder, KEY, type StartOptions, start, type Terminal } from './harness.ts';
import { question, smallCatalog } from './interview.ts';
import { appOf, UNDER_BASH } from './under-bash.ts';

const catalog = smallCatalog();
const LEFT = '\u001b[?1049l';
const ARGS = commandOn(catalog);

/** The program under a shell that says afterwards how it ended, and what the terminal is like. */
function inShell(more: readonly string[] = [], options: Omit<StartOptions, 'command'> = {}): Terminal {
  return start({ rows: 40, ...options, command: ['bash', ...UNDER_BASH, ...ARGS, ...more] });
}

async function firstAnswer(terminal: Terminal): Promise<void> {
  await terminal.waitFor('Begin a new interview');
  terminal.send(KEY.enter);
  await terminal.waitFor(question(1));
  terminal.send(KEY.enter);
  await terminal.waitFor(question(2));
}

/** After the program has ended: its code, and whether the terminal is as it was. */
async function endedWith(terminal: Terminal, code: number): Promise<string> {
  await terminal.ended();
  const text = terminal.lines().join('\n');
  expect(text).toContain(`ended with ${code} `);
  expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
  expect(text).toMatch(/(^|[ ;])icanon/m);
  expect(text).toMatch(/(^|[ ;])echo([ ;]|$)/m);
  const left = terminal.raw.lastIndexOf(LEFT);
  expect(terminal.raw.lastIndexOf('\u001b[?2004l')).toBeGreaterThan(
    terminal.raw.lastIndexOf('\u001b[?2004h'),
  );
  expect(terminal.raw.slice(0, left).endsWith('\u001b[0m\u001b[?25h')).toBe(true);
  // showing the cursor once more does no harm: what draws does it when the process ends
  expect(terminal.raw.slice(left + LEFT.length).replaceAll('\u001b[?25h', '')).not.toContain('\u001b');
  return text;
}

describe('requirements 19 and 20: the terminal is given back, and the code says how it ended', () => {
  test('Ctrl-C says where the answers are; another key goes on; twice it leaves with 130', async () => {
    const terminal = inShell();
    await firstAnswer(terminal);
    terminal.send(KEY.ctrlC);
    await terminal.waitFor('kept.json. Ctrl-C again leaves; another key goes on.');
    await terminal.press(KEY.down);
    expect(terminal.text()).not.toContain('Ctrl-C again');
    expect(terminal.text()).toContain('❯ Sallow');
    terminal.send(KEY.ctrlC + KEY.ctrlC);
    expect(await endedWith(terminal, 130)).toContain('Your answers are in');
  });

  test.each([
    ['SIGTERM', 143],
    ['SIGHUP', 129],
    ['SIGQUIT', 131],
    ['SIGINT', 130],
  ] as const)('%s: %i', async (signal, code) => {
    const terminal = inShell();
    await firstAnswer(terminal);
    process.kill(appOf(terminal), signal);
    expect(await endedWith(terminal, code)).toContain('Your answers are in');
  });

  test('the window is closed: the program ends, with the answers kept', async () => {
    const terminal = start({ command: ARGS });
    await firstAnswer(terminal);
    const { pid, cwd } = terminal;
    terminal.hangUp();
    await vi.waitFor(() => expect(() => process.kill(pid, 0)).toThrow('ESRCH'), { timeout: 20_000 });
    expect(readFileSync(join(cwd, 'kept.json'), 'utf8')).toContain('"units"');
  });

  test.each([
    ['in the program', 'isMainThread'],
    ['in the thread that decides', '!isMainThread'],
  ])('a fault %s: 1, and it is said', async (_, where) => {
    const cwd = emptyFolder();
    const fault = join(cwd, 'fault.mjs');
    writeFileSync(
      fault,
      `import { existsSync } from 'node:fs'; import { isMainThread } from 'node:worker_threads';
       if (${where}) setInterval(() => { if (existsSync('now')) throw new Error('on purpose'); }, 10).unref();`,
    );
    const terminal = inShell([], { cwd, env: { NODE_OPTIONS: `--import ${fault}` } });
    await firstAnswer(terminal);
    mkdirSync(join(cwd, 'now'));
    const text = await endedWith(terminal, 1);
    expect(text).toContain('a fault of the program: on purpose');
  });

  test('an interview that is left unfinished: 4', async () => {
    const terminal = inShell();
    await firstAnswer(terminal);
    terminal.send('q');
    const text = await endedWith(terminal, 4);
    expect(text).toContain('The interview is unfinished.');
    expect(text.replace(/\s+/g, ' ')).toContain(
      '"fivesides --resume --session kept.json" goes on with them.',
    );
  });

  test.each([
    ['an option that there is not', ['--nothing'], '--nothing'],
    ['a catalog that there is not', ['--catalog', 'nowhere'], 'nowhere'],
    ['nothing to go on with', ['--resume'], 'there is no saved interview'],
  ])('%s: 2, and why stands on the normal screen', async (_, more, words) => {
    const terminal = inShell(more);
    await terminal.ended();
    const text = terminal.lines().join('\n');
    expect(text).toContain('ended with 2 ');
    expect(text.replace(/\s+/g, ' ')).toContain(words);
    expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
    expect(text).toMatch(/(^|[ ;])icanon/m);
  });
});

describe('requirement 20: stopped for a while', () => {
  test('Ctrl-Z gives the shell its terminal, and fg paints everything anew', async () => {
    const terminal = start({
      rows: 30,
      command: ['bash', '--norc', '--noprofile', '-i'],
      env: { PS1: 'ready> ' },
    });
    await terminal.waitFor('ready>');
    terminal.send(`'${ARGS.join("' '")}'\r`);
    await firstAnswer(terminal);
    await terminal.press(KEY.down);
    const before = terminal.text();
    for (let round = 0; round < 2; round += 1) {
      terminal.send(KEY.ctrlZ);
      await terminal.waitFor('Stopped');
      expect(terminal.modes).toMatchObject({ alternate: false, cursor: true });
      terminal.send('stty -a\r');
      expect(await terminal.waitFor(/min = /)).toMatch(/[ ;]icanon/);
      terminal.send('fg\r');
      await terminal.waitFor((text) => text === before);
      expect(terminal.modes).toEqual({ alternate: true, cursor: false, paste: true });
    }
    await terminal.press(KEY.down);
    expect(terminal.text()).toContain('❯ Osier');
    terminal.send('q');
    await terminal.waitFor('The interview is unfinished.');
    terminal.send('exit\r');
    await terminal.ended();
  });

  test('where nobody could go on with it, Ctrl-Z goes on by itself', async () => {
    const terminal = start({ catalog });
    await firstAnswer(terminal);
    const before = terminal.text();
    terminal.send(KEY.ctrlZ);
    await terminal.waitFor(
      (text) =>
        text === before &&
        terminal.raw.lastIndexOf('\u001b[?1049h') > terminal.raw.lastIndexOf('\u001b[?1049l') &&
        terminal.raw.includes('\u001b[?1049l'),
    );
    await terminal.press(KEY.down);
    expect(terminal.text()).toContain('❯ Sallow');
  });
});
