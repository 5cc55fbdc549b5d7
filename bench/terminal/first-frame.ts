import { join, resolve } from 'node:path';
import { bundle } from '../../scripts/bundle.mjs';
import type { Bench } from '../figure.ts';
import { inMs, interleaved } from '../interleaved.ts';
import { FRAME_END, InTerminal } from './in-terminal.ts';
import { keptInterview, LAST_WORDS } from './kept-interview.ts';

const SIZE = { columns: 80, rows: 24 };
const HELLO = 'bench/terminal/hello.mjs';

/** All rows are there: the plain ones, which take keys already, or those that Ink has painted in one piece. */
const isComplete = (raw: string): boolean => raw.includes(LAST_WORDS);
const isPainted = (raw: string): boolean =>
  raw.lastIndexOf(FRAME_END) > raw.indexOf(LAST_WORDS) && isComplete(raw);

/** Requirement 4, second half: a complete frame of 24 rows that takes keys, beside the least that Ink can do. */
export const firstFrame: Bench = {
  name: 'first-frame',
  run: async ({ rounds, program, folder }) => {
    const built = join(folder, 'hello');
    await bundle(built, { hello: HELLO });
    const ours = keptInterview(program, folder);
    const timeUntil = async (args: readonly string[], holds: (raw: string) => boolean): Promise<number> => {
      const terminal = new InTerminal(args, SIZE, folder);
      const time = await terminal.until(holds);
      await terminal.end();
      return time;
    };
    const hello = (raw: string): boolean => raw.includes('Hello, world');
    const { complete, painted, bundled, unbundled } = await interleaved(rounds, {
      complete: () => timeUntil(ours, isComplete),
      painted: () => timeUntil(ours, isPainted),
      bundled: () => timeUntil([join(built, 'hello.js')], hello),
      unbundled: () => timeUntil([resolve(HELLO)], hello),
    });
    const against = (what: string, time: number, than: number, atMost: number | null) =>
      ({
        requirement: 4,
        what,
        value: time / than,
        unit: '×',
        atMost,
        beside: `${inMs(time)} / ${inMs(than)}`,
      }) as const;
    return [
      against('first complete frame that takes keys / Ink hello', complete, bundled, 1.2),
      against('first complete frame that takes keys / Ink hello, unbundled', complete, unbundled, 0.5),
      against('the same frame painted by Ink / Ink hello', painted, bundled, null),
      against('the same frame painted by Ink / Ink hello, unbundled', painted, unbundled, null),
    ];
  },
};
