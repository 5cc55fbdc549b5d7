// npm run bench -- [names of benches] [--rounds 15]: figures as ratios, beside what is promised.
import { mkdtemp, rm } from 'node:fs/promises';
import { cpus, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { bundle } from '../scripts/bundle.mjs';
import { anchors } from './anchors/anchors.ts';
import { decisions } from './decision/decisions.ts';
import type { Bench, Figure } from './figure.ts';
import { atSize } from './market/at-size.ts';
import { growth } from './market/growth.ts';
import { table } from './table.ts';
import { firstFrame } from './terminal/first-frame.ts';
import { firstPaint } from './terminal/first-paint.ts';
import { headless } from './terminal/headless.ts';
import { keyToPaint } from './terminal/key-to-paint.ts';
import { memory } from './terminal/memory.ts';

/** Every bench, in the order of the table. */
const BENCHES: readonly Bench[] = [
  firstPaint,
  firstFrame,
  headless,
  keyToPaint,
  memory,
  decisions,
  anchors,
  growth,
  atSize,
];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { rounds: { type: 'string', default: '15' } },
});
const rounds = Number(values.rounds);
const unknown = positionals.filter((name) => !BENCHES.some((each) => each.name === name));
if (unknown.length > 0 || !Number.isInteger(rounds) || rounds < 1) {
  console.error(`There is: ${BENCHES.map(({ name }) => name).join(', ')}; and --rounds with a whole number.`);
  process.exitCode = 2;
} else {
  await runAll(BENCHES.filter(({ name }) => positionals.length === 0 || positionals.includes(name)));
}

async function runAll(benches: readonly Bench[]): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'fivesides-bench-'));
  try {
    await bundle('dist');
    const figures: Figure[] = [];
    for (const bench of benches) {
      console.error(`measuring: ${bench.name}`);
      figures.push(...(await bench.run({ rounds, program: resolve('dist/main.js'), folder })));
    }
    console.log(table(figures));
    console.log(
      `\nMedians of ${rounds} interleaved rounds. Node ${process.versions.node}, ${cpus().length} cores.`,
    );
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
