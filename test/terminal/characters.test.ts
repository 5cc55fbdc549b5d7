import { execFileSync, spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { commandOn, emptyFolder, KEY, type Terminal } from './harness.ts';
import { answered, begun, HINGE, settled, smallCatalog, turnsOf, undecided, until } from './interview.ts';

const catalog = smallCatalog();
const TURNS = turnsOf(HINGE, undecided(catalog));
/** Letters of two columns, marks that join the letter before, pictures of two columns. */
const FOREIGN = '軸受け E\u0301lise\u0301 🔧😀';
const RIGHT = /(typed|open|not sure)$/;

async function atReview(name: string, args: readonly string[] = []): Promise<Terminal> {
  const terminal = await begun({ catalog, args });
  await answered(terminal, until(TURNS, 'name'));
  await terminal.waitFor('What do you call this part?');
  terminal.send(`${name}\r`);
  await answered(terminal, until(TURNS, 'material').slice(until(TURNS, 'name').length + 1));
  await terminal.waitFor('made of?');
  terminal.send('r');
  await terminal.waitFor('Review');
  return terminal;
}

test('requirement 24: with --ascii no byte is above 127, whatever is looked at', async () => {
  const terminal = await atReview('Hinge', ['--ascii']);
  for (const key of [KEY.escape, 'g', KEY.escape, '?', KEY.escape, KEY.down, 't', 'w', 'n', 'o', 's']) {
    await terminal.press(key);
    await settled(terminal);
  }
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  expect(terminal.raw.match(/[^\u0000-\u007f]+/g)).toBeNull();
});

describe('requirement 24: letters of other widths in a name leave what stands at the right in line', () => {
  test('in one terminal', async () => {
    const terminal = await atReview(FOREIGN);
    const rows = terminal.screen().map((row, index) => ({ row, columns: terminal.columnsOf(index) }));
    const lined = rows.filter(({ row }) => RIGHT.test(row));
    expect(lined.filter(({ row }) => row.includes('軸受け')).length).toBeGreaterThan(3);
    expect(lined.filter(({ columns }) => columns !== 80)).toEqual([]);
  });

  const hasTmux = spawnSync('tmux', ['-V']).status === 0;
  test.skipIf(!hasTmux)('in another one', async () => {
    const own = ['-L', `fivesides-${process.pid}-${Date.now()}`, '-f', '/dev/null'];
    const cwd = emptyFolder();
    const tmux = (...args: readonly string[]): string =>
      execFileSync('tmux', [...own, ...args], {
        cwd,
        encoding: 'utf8',
        env: { ...process.env, LC_ALL: 'C.UTF-8', CI: 'false', HOME: cwd },
      });
    const shown = async (words: string): Promise<string> => {
      for (let tries = 0; tries < 400; tries += 1) {
        const text = tmux('capture-pane', '-p');
        if (text.includes(words)) return text;
        await new Promise((done) => setTimeout(done, 50));
      }
      throw new Error(`"${words}" never came; there is:\n${tmux('capture-pane', '-p')}`);
    };
    try {
      tmux('-u', 'new-session', '-d', '-x', '80', '-y', '24', ...commandOn(catalog));
      await shown('Begin a new interview');
      tmux('send-keys', 'Enter');
      for (const question of ['millimeters or in inches', 'Do you own a mill']) {
        await shown(question);
        tmux('send-keys', 'Enter');
      }
      await shown('What do you call this part?');
      tmux('send-keys', '-l', FOREIGN);
      tmux('send-keys', 'Enter');
      await shown('Which shape does');
      tmux('send-keys', 'r');
      const text = await shown('Review');
      // a row that ran into the next, or was moved by a letter, would not end in the last column
      const rows = text.split('\n').filter((row) => row.includes('軸受け') && RIGHT.test(row));
      expect(rows.length).toBeGreaterThan(3);
      const own80 = await inOurs();
      for (const row of rows) expect(own80).toContain(row);
    } finally {
      spawnSync('tmux', [...own, 'kill-server']);
    }
  });

  /** The same rows as the other emulator shows them. */
  async function inOurs(): Promise<readonly string[]> {
    const terminal = await begun({ catalog });
    await answered(terminal, until(TURNS, 'name'));
    await terminal.waitFor('What do you call this part?');
    terminal.send(`${FOREIGN}\r`);
    await terminal.waitFor('Which shape does');
    terminal.send('r');
    await terminal.waitFor('Review');
    return terminal.screen();
  }
});
