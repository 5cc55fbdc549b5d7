import { expect } from 'vitest';
import { readKeys } from '../../src/ui/keys/read-keys.ts';
import { start, type Terminal, typedAhead } from './harness.ts';
import type { Meant } from './meant.ts';
import { randomKeys } from './random-keys.ts';

const HANGS_MS = 20_000;
const MOST_KEYS = 25;
/** Paints the screen anew wherever it is pressed: when that is seen, every key before it is done with. */
export const REPAINT = '\u000c';
const PAINTED = '\u001b[0m\u001b[2J';

export const SEED = Number(process.env.FIVESIDES_SEED ?? 20_261_127);

/** So many as the environment says, for the long run; or the usual number. */
export const howMany = (name: string, usual: number): number => Number(process.env[name] ?? usual);

async function until(what: string, holds: () => boolean, there: () => string): Promise<void> {
  const from = performance.now();
  while (!holds()) {
    if (performance.now() - from > HANGS_MS) throw new Error(`${what}; there is:\n${there()}`);
    await new Promise((done) => setTimeout(done, 2));
  }
}

/** Until the screen is painted anew, after these bytes where any are named. */
export const painted = async (terminal: Terminal, from: number, after = ''): Promise<void> => {
  await until(
    'it is not painted any more',
    () => {
      const begin = after === '' ? from : terminal.raw.indexOf(after, from);
      return terminal.exit !== null || (begin >= 0 && terminal.raw.includes(PAINTED, begin));
    },
    () => terminal.text(),
  );
  expect(terminal.exit, terminal.text()).toBeNull();
};

interface Burst {
  readonly text: string;
  readonly count: number;
  readonly waits: boolean;
}

/**
 * Keys of one write: up to the one that something has to be worked out for, or that ends the program, as `leaves` of such
 * keys may.
 */
export function burst(
  meant: Meant,
  chance: () => number,
  leaves: number,
  pressed: () => void = () => undefined,
): Burst {
  let [text, count, waits] = ['', 0, false];
  while (count < MOST_KEYS && meant.left === 'not') {
    const more = randomKeys(chance);
    const { keys } = readKeys(more, true);
    if (meant.wouldLeave(keys) && chance() >= leaves) continue;
    for (const key of keys) {
      meant.press([key]);
      pressed();
    }
    text += more.startsWith('\u001b[200~') ? more : typedAhead(more);
    count += Math.max(1, keys.length);
    waits = meant.asked();
    if (waits) break;
  }
  return { text, count, waits };
}

/** The program started, and the same without a terminal; `cwd`: the folder of a run before. */
export async function begins(
  meant: Meant,
  catalog: string,
  cwd: string | undefined,
  resumes: boolean,
): Promise<Terminal> {
  meant.begins(resumes);
  const terminal = start({
    catalog,
    ...(cwd === undefined ? {} : { cwd }),
    args: resumes ? ['--resume'] : [],
  });
  await painted(terminal, 0);
  return terminal;
}
