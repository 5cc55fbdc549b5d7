import { LESSON_START, type LessonRun, scoreOf } from './run-lesson.ts';

/** How far somebody has come, in a few words. Example: 'step 3 of 5, 17 of 20 points'; 'done, 43 of 50 points'. */
export function reachedWords(run: LessonRun, steps: number): string {
  const { points, of } = scoreOf(run);
  const score = of === 0 ? '' : `, ${points} of ${of} points`;
  return run.phase === 'done' ? `done${score}` : `step ${Math.min(run.index + 1, steps)} of ${steps}${score}`;
}

/** Where a lesson is begun: where it was left; anew where it was at its end, or has fewer steps by now. */
export const begunAt = (kept: LessonRun | undefined, steps: number): LessonRun =>
  kept === undefined || kept.phase === 'done' || kept.index >= steps ? LESSON_START : kept;
