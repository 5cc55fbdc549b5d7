import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import type { Exercise } from '../../../src/teaching/exercises/exercise.ts';

/** A file with a line for each exercise that was looked at, so that a long run is gone on with where it was left; else nothing is noted. */
const FILE = process.env.EXERCISES_LOG;

/** What was found of an exercise: of each thing that must hold what is wrong with it, empty where nothing is. */
export type Found = Readonly<Record<string, string>>;

const keyOf = ({ about, seed, level }: Pick<Exercise, 'about' | 'seed' | 'level'>): string =>
  `${about} ${seed} level ${level}`;

const done = new Set(
  (FILE === undefined || !existsSync(FILE) ? '' : readFileSync(FILE, 'utf8'))
    .split('\n')
    .filter((line) => line !== '')
    .map((line): { readonly key: string; readonly found: Found } => JSON.parse(line))
    .filter(({ found }) => Object.values(found).every((wrong) => wrong === ''))
    .map(({ key }) => key),
);

/** Whether it was found to be sound already. */
export const wasSound = (exercise: Pick<Exercise, 'about' | 'seed' | 'level'>): boolean =>
  done.has(keyOf(exercise));

export function note(exercise: Pick<Exercise, 'about' | 'seed' | 'level'>, found: Found): void {
  if (FILE !== undefined) appendFileSync(FILE, `${JSON.stringify({ key: keyOf(exercise), found })}\n`);
}
