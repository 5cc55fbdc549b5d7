import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Chance } from '../../../bench/interviews/chance.ts';

export type Came = 'taken' | 'refused';

/** A way into the program, and what has to hold whatever comes that way. */
export interface FuzzedInput {
  readonly name: string;
  /** of a thousand cases, how many are of this input */
  readonly share: number;
  /** good files, to be spoiled */
  readonly seeds: () => readonly Uint8Array[];
  /** Takes bytes as the program would; throws where anything is wrong with what it does with them. */
  readonly take: (bytes: Buffer, chance: Chance) => Came | Promise<Came>;
}

// from the folder of the project, where tests and scripts run
const DEMO = 'catalog-demo';

/** Files of the demo whose names end so. */
export const demoFilesEnding = (ending: RegExp, folder = DEMO): readonly Uint8Array[] =>
  readdirSync(folder)
    .filter((name) => ending.test(name))
    .map((name) => readFileSync(join(folder, name)));

export const LESSONS = join(DEMO, 'lessons');
export const FIXTURES = join('test', 'fixtures');
export const FILE = 'some.yaml';
