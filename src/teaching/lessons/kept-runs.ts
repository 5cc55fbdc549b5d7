import * as z from 'zod';
import type { LessonRun } from './run-lesson.ts';

const FORMAT = 'fivesides-lesson-runs/1' as const;

const taken = z.strictObject({
  answer: z.string().max(1000).nullable(),
  hints: z.int().min(0).max(100),
  wrong: z.int().min(0).max(100_000),
});
const run = z.strictObject({
  index: z.int().min(0).max(1000),
  phase: z.enum(['predict', 'revealed', 'done']),
  hints: z.int().min(0).max(100),
  wrong: z.int().min(0).max(100_000),
  scores: z.array(z.number().min(0).max(10)).max(1000),
  taken: z.array(taken.nullable()).max(1000).default([]),
});
const runs = z.strictObject({ format: z.literal(FORMAT), runs: z.record(z.string(), run) });

/** How far somebody has come, by lesson and learner: `runKey`. */
export type KeptRuns = Readonly<Record<string, LessonRun>>;

/** Neither a lesson nor a learner has it in its name. */
const BETWEEN = '\t';

/** Under what a run is kept; without a learner it is that of whoever sits there. */
export const runKey = (lesson: string, learner?: string): string =>
  learner === undefined ? lesson : `${learner}${BETWEEN}${lesson}`;

/** Whose run of which lesson it is. Example: runOf(runKey('reach', 'Bench 4')) → { learner: 'Bench 4', lesson: 'reach' }. */
export function runOf(key: string): { readonly learner: string | null; readonly lesson: string } {
  const at = key.indexOf(BETWEEN);
  return at < 0
    ? { learner: null, lesson: key }
    : { learner: key.slice(0, at), lesson: key.slice(at + BETWEEN.length) };
}

/** Runs from the text of the file in which they are kept; null where it is not such a file. */
export function keptRuns(text: string): KeptRuns | null {
  try {
    const read = runs.safeParse(JSON.parse(text));
    if (!read.success) return null;
    return Object.fromEntries(
      Object.entries(read.data.runs).map(([name, each]) => [name, { ...each, feedback: null }]),
    );
  } catch {
    return null;
  }
}

/** The text of that file. Ends with one line break. */
export function keptRunsText(kept: KeptRuns): string {
  const plain = Object.fromEntries(
    Object.entries(kept).map(([name, { feedback: _, ...each }]) => [name, each]),
  );
  return `${JSON.stringify({ format: FORMAT, runs: plain }, null, 2)}\n`;
}
