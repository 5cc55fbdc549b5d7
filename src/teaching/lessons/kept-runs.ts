import * as z from 'zod';
import type { LessonRun } from './run-lesson.ts';

const FORMAT = 'fivesides-lesson-runs/1' as const;

const run = z.strictObject({
  index: z.int().min(0).max(1000),
  phase: z.enum(['predict', 'revealed', 'done']),
  hints: z.int().min(0).max(100),
  wrong: z.int().min(0).max(100_000),
  scores: z.array(z.number().min(0).max(10)).max(1000),
});
const runs = z.strictObject({ format: z.literal(FORMAT), runs: z.record(z.string(), run) });

/** How far somebody has come, by the names of lessons. */
export type KeptRuns = Readonly<Record<string, LessonRun>>;

/** Runs from the text of the file in which they are kept; none where it is not such a file. */
export function keptRuns(text: string): KeptRuns {
  try {
    const read = runs.safeParse(JSON.parse(text));
    if (!read.success) return {};
    return Object.fromEntries(
      Object.entries(read.data.runs).map(([name, each]) => [name, { ...each, feedback: null }]),
    );
  } catch {
    return {};
  }
}

/** The text of that file. Ends with one line break. */
export function keptRunsText(kept: KeptRuns): string {
  const plain = Object.fromEntries(
    Object.entries(kept).map(([name, { feedback: _, ...each }]) => [name, each]),
  );
  return `${JSON.stringify({ format: FORMAT, runs: plain }, null, 2)}\n`;
}
