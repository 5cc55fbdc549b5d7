import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { chanceOf } from '../../bench/interviews/chance.ts';
import { named } from '../../src/ui/keys/key.ts';
import { readKeys } from '../../src/ui/keys/read-keys.ts';
import { begins, burst, howMany, painted, REPAINT, SEED } from './at-random.ts';
import { KEY, type Terminal } from './harness.ts';
import { settled, smallCatalog } from './interview.ts';
import { Meant } from './meant.ts';
import { oneOf, randomKeys } from './random-keys.ts';

const KEYS = howMany('FIVESIDES_KEYS', 5000);
const BURST = 25;
/** far more than it takes: thousands of keys a minute where nothing else runs */
const LONGEST = 60_000 + KEYS * 180;
const ENTERED = '\u001b[?1049h';

type Size = readonly [columns: number, rows: number];
const SIZES: readonly Size[] = [
  [60, 20],
  [80, 24],
  [80, 24],
  [120, 40],
  [200, 50],
];
const TOO_SMALL: readonly Size[] = [
  [59, 21],
  [80, 19],
  [20, 5],
];
const CODES = { finished: [0, 3, 4], quit: [4], interrupted: [130], not: [] } as const;

const textOf = (file: string): string => (existsSync(file) ? readFileSync(file, 'utf8') : 'no file');

/** The interview and all papers are, byte for byte, what the same keys give without a terminal. */
function sameFiles(terminal: Terminal, meant: Meant, after: string): void {
  const files = readdirSync(meant.folder);
  expect(readdirSync(terminal.cwd).sort()).toEqual(files.sort());
  const pressed = `after ${JSON.stringify(after)}, at\n${terminal.text()}`;
  expect(textOf(join(terminal.cwd, 'kept.json')), pressed).toBe(textOf(meant.file));
}

const CATALOG = smallCatalog();

/** To another size: one that is none is not painted anew. */
async function resized(terminal: Terminal, sizes: readonly Size[], chance: () => number): Promise<void> {
  const now = terminal.screen().length;
  await terminal.resize(
    ...oneOf(
      sizes.filter(([, rows]) => rows !== now),
      chance,
    ),
  );
}

/** In a window that is too small no key does anything; what Ctrl-C says is there. */
async function squeezed(terminal: Terminal, meant: Meant, chance: () => number): Promise<void> {
  await resized(terminal, TOO_SMALL, chance);
  const keys = Array.from({ length: BURST }, () => randomKeys(chance)).filter(
    (each) => !each.includes(KEY.ctrlC),
  );
  terminal.send(`${keys.join('')}${KEY.ctrlC}`);
  await terminal.waitFor(/\^C leaves|Ctrl-C again/);
  meant.press([named('ctrl-c')]);
  await resized(terminal, SIZES, chance);
}

/** Nobody stops it here, so it goes on by itself. */
async function stopped(terminal: Terminal): Promise<void> {
  const from = terminal.raw.length;
  terminal.send(KEY.ctrlZ);
  await painted(terminal, from, ENTERED);
}

test(`requirements 8 and 20: whatever is pressed, ${KEYS} keys long: no crash, no hang, nothing lost, and the terminal is given back`, {
  timeout: LONGEST,
}, async () => {
  const chance = chanceOf(SEED).next;
  const meant = new Meant(CATALOG);
  let terminal = await begins(meant, CATALOG, undefined, false);
  const counts = { keys: 0, bursts: 0, ended: 0, killed: 0 };
  while (counts.keys < KEYS) {
    const what = chance();
    if (what < 0.03) await squeezed(terminal, meant, chance);
    else if (what < 0.1) await resized(terminal, SIZES, chance);
    else if (what < 0.11) await stopped(terminal);
    const { text, count, waits } = burst(meant, chance, 0.5);
    counts.keys += count;
    counts.bursts += 1;
    const from = terminal.raw.length;
    terminal.send(meant.left === 'not' ? `${text}${REPAINT}` : text);
    if (meant.left === 'not') {
      meant.press(readKeys(REPAINT, true).keys);
      await painted(terminal, from);
      if (meant.asked() || waits) await settled(terminal);
      sameFiles(terminal, meant, `${what} ${text}`);
      if (what < 0.985) continue;
      terminal.kill('SIGKILL');
      await terminal.ended();
      counts.killed += 1;
    } else {
      const { code } = await terminal.ended();
      expect(CODES[meant.left]).toContain(code);
      expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
      sameFiles(terminal, meant, `${what} ${text}`);
      counts.ended += 1;
    }
    await terminal.close();
    const resumes = existsSync(meant.file) && chance() < 0.7;
    terminal = await begins(meant, CATALOG, terminal.cwd, resumes);
  }
  terminal.send(`${KEY.ctrlC}${KEY.ctrlC}`);
  expect((await terminal.ended()).code).toBe(130);
  expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
  sameFiles(terminal, meant, 'Ctrl-C twice');
  // it did get somewhere
  console.info(JSON.stringify({ seed: SEED, ...counts }));
  expect(readdirSync(meant.folder).length).toBeGreaterThan(1);
  expect(counts.ended, JSON.stringify(counts)).toBeGreaterThan(0);
  expect(counts.killed, JSON.stringify(counts)).toBeGreaterThan(0);
});
