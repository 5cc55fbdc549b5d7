import type { Bench } from '../figure.ts';
import { inMs, interleaved } from '../interleaved.ts';
import { InTerminal } from './in-terminal.ts';
import { nodeAlone } from './node-alone.ts';

/** Requirement 4, first half: the first words on the screen. */
export const firstPaint: Bench = {
  name: 'first-paint',
  run: async ({ rounds, program, folder }) => {
    const { node, paint } = await interleaved(rounds, {
      node: () => nodeAlone(folder),
      paint: async () => {
        const terminal = new InTerminal([program], { columns: 80, rows: 24 }, folder);
        const time = await terminal.until((raw) => raw.includes('fivesides'));
        await terminal.end();
        return time;
      },
    });
    return [
      {
        requirement: 4,
        what: 'first paint / `node -e 0`',
        value: paint / node,
        unit: '×',
        atMost: 1.2,
        beside: `${inMs(paint)} / ${inMs(node)}`,
      },
    ];
  },
};
