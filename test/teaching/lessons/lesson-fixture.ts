import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describeProblem } from '../../../src/documents/problem.ts';
import type { Lesson } from '../../../src/teaching/lessons/lesson.ts';
import { readLesson } from '../../../src/teaching/lessons/read-lesson.ts';
import type { ReadyLesson } from '../../../src/teaching/lessons/run-lesson.ts';
import { prepareLesson } from '../../../src/teaching/lessons/step-key.ts';
import { DEMO_FOLDER, demoCatalog } from '../../catalog-demo/demo.ts';

export const LESSONS_FOLDER = join(DEMO_FOLDER, 'lessons');

/** Every lesson of the demo, by its name. */
export const LESSON_NAMES = readdirSync(LESSONS_FOLDER).map((file) => file.replace(/\.yaml$/, ''));

export const lessonText = (name: string): string =>
  readFileSync(join(LESSONS_FOLDER, `${name}.yaml`), 'utf8');

/** A lesson of the demo; throws with every problem where it cannot be read. */
export function demoLesson(name: string): Lesson {
  const reading = readLesson(`${name}.yaml`, lessonText(name));
  if (!reading.ok) throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value;
}

/** The same with its keys; throws where a step cannot be worked out. */
export function readyLesson(name: string): ReadyLesson {
  const ready = prepareLesson(demoLesson(name), demoCatalog());
  if (!ready.ok) throw new Error(ready.faults.join('\n'));
  return ready;
}
