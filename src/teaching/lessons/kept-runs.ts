import * as z from 'zod';
import { exerciseNamed } from './exercise-key.ts';
import type { LessonRun } from './run-lesson.ts';

const FORMAT = 'fivesides-lesson-runs/1' as const;

const taken = z.strictObject({
  answer: z.string().max(1000).nullable(),
  hints: z.int().min(0).max(100),
  wrong: z.int().min(0).max(100_000),
  on: z
    .string()
    .regex(/^\d{4}-\d\d-\d\d$/)
    .optional(),
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

/** More exercises are not kept, of all learners together: each is drawn again by its seed. Lessons stay. */
const MOST_EXERCISES = 1000;

/** With how far somebody has come now; of too many exercises without those that were left alone longest. */
export function withRun<Run>(
  kept: Readonly<Record<string, Run>>,
  key: string,
  now: Run,
): Readonly<Record<string, Run>> {
  const { [key]: _, ...others } = kept;
  const all = [...Object.entries(others), [key, now] as const];
  const exercises = all.filter(([each]) => exerciseNamed(runOf(each).lesson) !== null);
  const gone = new Set(
    exercises.slice(0, Math.max(0, exercises.length - MOST_EXERCISES)).map(([each]) => each),
  );
  return Object.fromEntries(all.filter(([each]) => !gone.has(each)));
}

/** With the day on each step that came to its end since it was kept last. Example of a day: '2026-11-26'. */
export function withDays(now: LessonRun, kept: LessonRun | undefined, today: string): LessonRun {
  const goesOn = kept !== undefined && (kept.phase !== 'done' || now.phase === 'done');
  const before = goesOn && kept.scores.length <= now.scores.length ? kept.taken : [];
  return {
    ...now,
    taken: now.taken.map((step, index) =>
      step === null || step.on !== undefined
        ? step
        : { ...step, ...(index < before.length ? dayOf(before[index]) : { on: today }) },
    ),
  };
}

const dayOf = (step: LessonRun['taken'][number] | undefined): { readonly on?: string } =>
  step?.on === undefined ? {} : { on: step.on };
