import { runKey } from '../teaching/lessons/kept-runs.ts';
import { reachedWords } from '../teaching/lessons/reached.ts';
import { readLesson } from '../teaching/lessons/read-lesson.ts';
import { lessonRunsFile, readLessonRuns } from './lesson-runs.ts';
import { fileOfLesson, lessonNames } from './open-lesson.ts';

/** The lessons that come with the program, and how far a learner has come in each. */
export function lessonsWithReached(
  env: Readonly<Record<string, string | undefined>>,
  learner?: string,
): readonly { readonly name: string; readonly title: string; readonly reached: string }[] {
  const runs = readLessonRuns(lessonRunsFile(env)) ?? {};
  return lessonNames().map((name) => {
    const lesson = readLesson(fileOfLesson(name));
    if (!lesson.ok) return { name, title: name, reached: '' };
    const run = runs[runKey(name, learner)];
    const { title, steps } = lesson.value;
    return { name, title, reached: run === undefined ? '' : reachedWords(run, steps.length) };
  });
}
