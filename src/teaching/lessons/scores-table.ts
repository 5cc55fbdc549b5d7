import { csvText } from '../../documents/csv-text.ts';
import { exerciseNamed } from './exercise-key.ts';
import { type KeptRuns, runOf } from './kept-runs.ts';
import { FULL_POINTS } from './run-lesson.ts';

const HEADINGS = [
  'learner',
  'lesson',
  'seed',
  'date',
  'step',
  'answer',
  'hints',
  'wrong',
  'points',
  'of',
] as const;

/**
 * Every step that somebody brought to its end, as a table in CSV: learner by learner, lesson by lesson. Without a name the
 * learner is an empty cell; so is the seed of what is no exercise, the day that nobody wrote down, the answer of a step that was revealed, and what was not written down when it was taken.
 */
export function scoresTable(kept: KeptRuns): string {
  const rows = Object.keys(kept)
    .sort(inOrder)
    .flatMap((key) => {
      const { learner, lesson } = runOf(key);
      const exercise = exerciseNamed(lesson);
      const { scores = [], taken = [] } = kept[key] ?? {};
      return scores.map((points, index) => {
        const step = taken[index] ?? null;
        const how = [step?.answer ?? '', text(step?.hints), text(step?.wrong)];
        const which = [exercise?.lesson ?? lesson, exercise === null ? '' : String(exercise.seed)];
        return [
          learner ?? '',
          ...which,
          step?.on ?? '',
          String(index + 1),
          ...how,
          String(points),
          String(FULL_POINTS),
        ];
      });
    });
  return csvText([HEADINGS, ...rows]);
}

const text = (count: number | undefined): string => (count === undefined ? '' : String(count));

/** Those without a name first. By code units, so that it is the same everywhere. */
function inOrder(one: string, other: string): number {
  const [a, b] = [runOf(one), runOf(other)];
  return compare(a.learner ?? '', b.learner ?? '') || compare(a.lesson, b.lesson);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
