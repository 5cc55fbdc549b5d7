import type { Bench, Figure } from '../figure.ts';
import { quantile } from '../interleaved.ts';
import { FRAME_END, InTerminal, type TerminalSize } from './in-terminal.ts';
import { keptInterview, LAST_WORDS } from './kept-interview.ts';

const UP = '\u001b[A';
const DOWN = '\u001b[B';
const KEYS = 60;
/** Down to the end of a long window of rows and beyond, and back again. */
const WAY = [...Array.from({ length: KEYS / 2 }, () => DOWN), ...Array.from({ length: KEYS / 2 }, () => UP)];

/** Screens with every row filled, and the keys from the review to them. */
const SCREENS = [
  { name: 'review', keys: [] },
  { name: 'jump list', keys: ['g'] },
  { name: 'why not', keys: ['t', 'n'] },
  { name: 'the answer', keys: ['t'] },
] as const;

interface Pressed {
  readonly times: readonly number[];
  readonly bytes: readonly number[];
}

/** Goes to a screen, and presses all keys of the way, each when all is quiet. */
async function pressed(
  args: readonly string[],
  keys: readonly string[],
  size: TerminalSize,
  folder: string,
): Promise<Pressed> {
  const terminal = new InTerminal(args, size, folder);
  await terminal.until((raw) => raw.includes(LAST_WORDS) && raw.includes(FRAME_END));
  // what is decided meanwhile is decided
  await terminal.quiet(3000);
  for (const key of keys) {
    terminal.send(key);
    await terminal.quiet(3000);
  }
  const times: number[] = [];
  const bytes: number[] = [];
  for (const key of WAY) {
    const before = terminal.raw.length;
    times.push(await terminal.painted(key, (since) => since.includes(FRAME_END)));
    await terminal.quiet(40);
    bytes.push(Buffer.byteLength(terminal.raw.slice(before)));
  }
  await terminal.end();
  return { times, bytes };
}

/** Requirement 6: from a key to the end of its frame, and what a step of the highlight costs. */
export const keyToPaint: Bench = {
  name: 'key-to-paint',
  run: async ({ program, folder }) => {
    const args = keptInterview(program, folder);
    const figures: Figure[] = [];
    for (const { name, keys } of SCREENS) {
      const { times } = await pressed(args, keys, { columns: 110, rows: 50 }, folder);
      const shared = { requirement: 6, unit: 'ms', beside: `${KEYS} keys, 110×50` } as const;
      figures.push(
        { ...shared, what: `key to paint, ${name}, median`, value: quantile(times, 0.5), atMost: 20 },
        { ...shared, what: `key to paint, ${name}, 95 of 100`, value: quantile(times, 0.95), atMost: 60 },
      );
    }
    for (const { name, keys } of SCREENS) {
      const { bytes } = await pressed(args, keys, { columns: 80, rows: 24 }, folder);
      figures.push({
        requirement: 6,
        what: `bytes per ↑/↓, ${name}, median`,
        value: quantile(bytes, 0.5),
        unit: 'bytes',
        atMost: 1500,
        beside: `80×24; least ${Math.min(...bytes)}, most ${Math.max(...bytes)}`,
      });
    }
    return figures;
  },
};
