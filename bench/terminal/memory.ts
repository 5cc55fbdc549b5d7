import { readFileSync } from 'node:fs';
import type { Bench, Figure } from '../figure.ts';
import { FRAME_END, InTerminal } from './in-terminal.ts';
import { keptInterview, LAST_WORDS } from './kept-interview.ts';

const [UP, DOWN, ENTER, ESCAPE] = ['\u001b[A', '\u001b[B', '\r', '\u001b'];
/** A round through the screens that ends where it began: review, a question, the jump list, the result. */
const ROUND = [
  DOWN,
  DOWN,
  DOWN,
  ENTER,
  DOWN,
  UP,
  ESCAPE,
  'g',
  DOWN,
  DOWN,
  ESCAPE,
  't',
  DOWN,
  'w',
  DOWN,
  'n',
  DOWN,
  UP,
  'o',
  ESCAPE,
];
const SETTLED_MS = 1500;

/** Kilobytes of resident memory, now and at most so far. */
function residentOf(pid: number): { readonly now: number; readonly most: number } {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const field = (name: string): number => {
    const found = new RegExp(`^${name}:\\s+(\\d+) kB`, 'm').exec(status)?.[1];
    if (found === undefined) throw new Error(`the system does not tell ${name}`);
    return Number(found);
  };
  return { now: field('VmRSS'), most: field('VmHWM') };
}

async function press(terminal: InTerminal, from: number, to: number): Promise<void> {
  for (let index = from; index < to; index += 1) {
    const key = ROUND[index % ROUND.length];
    if (key === undefined) throw new Error('there is no key');
    terminal.send(key);
    await terminal.quiet(key === ESCAPE ? 60 : 20);
  }
  await terminal.quiet(SETTLED_MS);
}

const MB = 1024;

/** Requirement 7: how much memory the interview holds, and whether that grows with its keys. */
export const memory: Bench = {
  name: 'memory',
  run: async ({ program, folder }) => {
    const figure = (what: string, value: number | null, atMost: number | null, beside: string): Figure => ({
      requirement: 7,
      what,
      value,
      unit: 'MB',
      atMost,
      beside,
    });
    const names = ['peak memory after 200 keys', 'growth of memory from key 500 to key 1500'] as const;
    if (process.platform !== 'linux') {
      return names.map((name) => figure(name, null, null, 'read from /proc, which only Linux has'));
    }
    const terminal = new InTerminal(keptInterview(program, folder), { columns: 80, rows: 24 }, folder);
    await terminal.until((raw) => raw.includes(LAST_WORDS) && raw.includes(FRAME_END));
    await terminal.quiet(SETTLED_MS);
    const first = residentOf(terminal.pid);
    await press(terminal, 0, 200);
    const early = residentOf(terminal.pid);
    await press(terminal, 200, 500);
    const middle = residentOf(terminal.pid);
    await press(terminal, 500, 1500);
    const late = residentOf(terminal.pid);
    await terminal.end();
    const inMb = (kilobytes: number): string => `${Math.round(kilobytes / MB)} MB`;
    return [
      figure(names[0], early.most / MB, 130, `${inMb(first.now)} when all is quiet at first`),
      figure(names[1], (late.now - middle.now) / MB, 5, `${inMb(middle.now)}, then ${inMb(late.now)}`),
    ];
  },
};
