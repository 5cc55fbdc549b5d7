import * as z from 'zod';
import { CLASS_START, type ClassRun } from './class-run.ts';

const FORMAT = 'fivesides-class-runs/1' as const;

const guess = z.strictObject({ wrong: z.int().min(0).max(100_000), points: z.number().min(0).max(10) });
const run = z.strictObject({
  index: z.int().min(0).max(1000),
  page: z.int().min(0).max(1000),
  guesses: z.record(z.string().regex(/^\d{1,4}$/), guess),
});
const runs = z.strictObject({ format: z.literal(FORMAT), runs: z.record(z.string(), run) });

/** How far classes have come, by lesson and learner as their own runs are. */
export type KeptClasses = Readonly<Record<string, ClassRun>>;

/** Class runs from the text of the file in which they are kept, without what was tried or refused; null: it is no such file. */
export function keptClasses(text: string): KeptClasses | null {
  try {
    const read = runs.safeParse(JSON.parse(text));
    if (!read.success) return null;
    return Object.fromEntries(
      Object.entries(read.data.runs).map(([key, { index, page, guesses }]) => [
        key,
        {
          ...CLASS_START,
          index,
          page,
          guesses: Object.fromEntries(
            Object.entries(guesses).map(([step, each]) => [step, { ...each, feedback: null }]),
          ),
        },
      ]),
    );
  } catch {
    return null;
  }
}

/** The text of that file. Ends with one line break. */
export function keptClassesText(kept: KeptClasses): string {
  const plain = Object.entries(kept).map(([key, { index, page, guesses }]) => [
    key,
    {
      index,
      page,
      guesses: Object.fromEntries(
        Object.entries(guesses).map(([step, { wrong, points }]) => [step, { wrong, points }]),
      ),
    },
  ]);
  return `${JSON.stringify({ format: FORMAT, runs: Object.fromEntries(plain) }, null, 2)}\n`;
}

/** Where a class goes on: where it was left; anew where it was at its end, or the lesson has fewer steps by now. */
export const classBegunAt = (kept: ClassRun | undefined, steps: number): ClassRun =>
  kept === undefined || kept.index >= steps ? CLASS_START : kept;
