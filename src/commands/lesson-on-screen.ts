import { printable } from '../documents/printable.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { classBegunAt } from '../teaching/lessons/kept-classes.ts';
import { runKey } from '../teaching/lessons/kept-runs.ts';
import { endLines, goesOnLines } from '../teaching/lessons/lesson-words.ts';
import { begunAt } from '../teaching/lessons/reached.ts';
import { lessonBeginning, type OpenedLesson } from '../ui/lesson/lesson-ui.ts';
import type { ColorWanted } from '../ui/shell/color.ts';
import type { LessonLeft } from '../ui/shell/lesson-run.ts';
import { lessonsWithReached } from './lesson-list.ts';
import {
  classRunsFile,
  keepClassRun,
  keepLessonRun,
  lessonRunsFile,
  readClassRuns,
  readLessonRuns,
} from './lesson-runs.ts';
import { type Opened, openLesson } from './open-lesson.ts';
import { SIGNAL_CODES } from './plain/farewell.ts';
import { columnsOf } from './plain/say.ts';

/** How lessons are shown, and to whom. */
export interface LessonScreenOptions {
  readonly catalog: readonly string[];
  readonly ascii: boolean;
  readonly color: ColorWanted;
  readonly units: LengthUnits;
  readonly learner: string | undefined;
  /** for a class, whose points stand in no table of scores */
  readonly isClass: boolean;
}

export interface LessonScreenAround {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** A lesson or an exercise that is ready. */
export type OpenedForUse = Opened & { readonly ok: true };

/**
 * Lessons on the whole screen: the one that was named, else a list to choose from. Everything that draws is loaded here, and
 * only here. Gives the exit code: 0, or that of the signal that ended it.
 */
export async function lessonOnScreen(
  begun: OpenedForUse | null,
  options: LessonScreenOptions,
  { stdin, stdout, env }: LessonScreenAround,
): Promise<number> {
  const { catalog, ascii, units, learner, isClass } = options;
  const { settleEnvironment, usesColor } = await import('../ui/shell/color.ts');
  const color = usesColor(options.color, env);
  settleEnvironment(color);
  const { runLessonScreen } = await import('../ui/shell/lesson-run.ts');
  const kept = lessonRunsFile(env);
  const classes = classRunsFile(env);
  const list = () => lessonsWithReached(env, learner);
  const opened = ({ name, ready }: OpenedForUse): OpenedLesson => {
    const [key, steps] = [runKey(name, learner), ready.keys.length];
    if (isClass)
      return {
        name,
        ready,
        goes: { how: 'class', run: classBegunAt(readClassRuns(classes)?.[key], steps) },
      };
    const run = begunAt(readLessonRuns(kept)?.[key], steps);
    return { name, ready, goes: { how: 'alone', run, looked: null, wrong: [] } };
  };
  const first = begun === null ? null : opened(begun);
  const left = await runLessonScreen(lessonBeginning(begun === null ? list() : null, first, units), {
    stdin,
    stdout,
    ascii,
    color,
    sessionFile: kept,
    list,
    open: (name) => {
      const file = openLesson(name, catalog);
      return file.ok ? opened(file) : { why: file.problems.join(' ') };
    },
    keep: (name, run) => keepLessonRun(kept, runKey(name, learner), run),
    keepClass: (name, run) => keepClassRun(classes, runKey(name, learner), run),
  });
  const again = begun?.again ?? null;
  const lines = leftLines(left, again, { width: columnsOf(stdout), ascii, units });
  for (const line of lines) stdout.write(`${printable(line)}\n`);
  return left.ending.how === 'signal' ? SIGNAL_CODES[left.ending.signal] : 0;
}

/** What stays on the normal screen: how it went, or how to go on; `again`: how the same exercise is drawn once more. */
function leftLines(
  { ui: { opened } }: LessonLeft,
  again: string | null,
  look: Parameters<typeof endLines>[2],
): readonly string[] {
  const drawn = again === null ? [] : [again];
  if (opened?.goes.how !== 'alone') return drawn;
  const { run } = opened.goes;
  if (run.phase === 'done') return [...endLines(opened.ready, run, look), ...drawn];
  if (run.scores.length === 0 && run.hints === 0 && run.wrong === 0) return drawn;
  return [
    ...goesOnLines(run, look).slice(0, -1),
    ...(again === null ? [`Your points are kept; "fivesides lesson ${opened.name}" goes on.`] : drawn),
  ];
}
