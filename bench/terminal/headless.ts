import { join } from 'node:path';
import { bundle } from '../../scripts/bundle.mjs';
import type { Bench } from '../figure.ts';
import { inMs, interleaved } from '../interleaved.ts';
import { DEMO, DEMO_ANSWERS } from './kept-interview.ts';
import { bytesByPackage, DRAWING, loadedChunks } from './loaded-chunks.ts';
import { nodeAlone, timeOfNode } from './node-alone.ts';

const KB = 1000;

/**
 * Requirement 5. The start-up share is a run of `decide` on files that are not there: everything is loaded, nothing is
 * read, nothing is decided.
 */
export const headless: Bench = {
  name: 'headless',
  run: async ({ rounds, program, folder }) => {
    const nothing = join(folder, 'nothing');
    const decide = (answers: string, catalog: string) => () =>
      timeOfNode([program, 'decide', answers, '--catalog', catalog], folder);
    const { node, version, start, whole } = await interleaved(rounds, {
      node: () => nodeAlone(folder),
      version: () => timeOfNode([program, '--version'], folder),
      start: decide(nothing, nothing),
      whole: decide(DEMO_ANSWERS, DEMO),
    });
    const chunks = loadedChunks(await bundle(join(folder, 'headless')), 'src/commands/decide.ts');
    const bytes = bytesByPackage(chunks);
    const drawing = DRAWING.filter((name) => bytes.has(name));
    const all = chunks.reduce((sum, chunk) => sum + chunk.bytes, 0);
    const ratio = (what: string, time: number, atMost: number | null) =>
      ({
        requirement: 5,
        what,
        value: time / node,
        unit: '×',
        atMost,
        beside: `${inMs(time)} / ${inMs(node)}`,
      }) as const;
    return [
      ratio('start-up share of `decide` / `node -e 0`', start, 1.3),
      ratio('`--version` / `node -e 0`', version, null),
      ratio('`decide` on the whole demo shop / `node -e 0`', whole, null),
      {
        requirement: 5,
        what: 'drawing packages that `decide` loads',
        value: drawing.length,
        unit: 'packages',
        atMost: 0,
        beside: `${drawing.join(', ') || 'none'}; ${chunks.length} files, ${Math.round(all / KB)} KB in all`,
      },
      {
        requirement: 5,
        what: 'zod in what `decide` loads',
        value: (bytes.get('zod') ?? 0) / KB,
        unit: 'KB',
        atMost: 100,
        beside: 'whole, it is about 450 KB',
      },
    ];
  },
};
