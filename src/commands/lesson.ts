import type { Readable, Writable } from 'node:stream';
import { printable } from '../documents/printable.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { classBegunAt } from '../teaching/lessons/kept-classes.ts';
import { runKey } from '../teaching/lessons/kept-runs.ts';
import { begunAt } from '../teaching/lessons/reached.ts';
import { filePath } from './file-path.ts';
import { interviewMode } from './interview-mode.ts';
import { lessonsWithReached } from './lesson-list.ts';
import type { OpenedForUse } from './lesson-on-screen.ts';
import {
  classRunsFile,
  keepClassRun,
  keepLessonRun,
  lessonRunsFile,
  notLessonRuns,
  readClassRuns,
  readLessonRuns,
} from './lesson-runs.ts';
import { writeScores } from './lesson-scores.ts';
import { sheetNumbers, writeSheets } from './lesson-sheets.ts';
import { openLesson } from './open-lesson.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { classShell } from './plain/class-shell.ts';
import { lessonShell } from './plain/lesson-shell.ts';
import { columnsOf } from './plain/say.ts';
import { typedLines } from './plain/typed-lines.ts';
import { openPractice, type PracticeOptions } from './practice.ts';

export interface LessonOptions extends PracticeOptions {
  readonly ascii?: boolean;
  readonly units?: LengthUnits;
  /** line by line, also in a terminal */
  readonly plain?: boolean;
  readonly color?: 'auto' | 'always' | 'never';
  /** shown to a class, step by step */
  readonly forClass?: boolean;
  /** under whose name points are kept */
  readonly learner?: string;
  /** a file for the points that are kept */
  readonly scores?: string;
  /** files for paper: what is asked, and what comes out */
  readonly worksheet?: string;
  readonly solutions?: string;
  readonly overwrite?: boolean;
}

/** What it reads from and writes to, so that tests can stand in for it. */
export interface LessonAround {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly stdout: Writable & { readonly isTTY?: boolean; readonly columns?: number };
  readonly stderr: Writable;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * `fivesides lesson`: goes through a lesson, by its name or a file of one's own, on the whole screen of a terminal, else line by
 * line; without a name it lists those that come with the program. With `--practice` an exercise is drawn instead. With `--class` it
 * is shown step by step, with `--worksheet` and `--solutions` written for paper, with `--scores` the points that are kept are written
 * as a table. Exit code 0; 2 where there is no such lesson, or it cannot be used: one line per problem; that of the signal that
 * ended the screen.
 */
export async function lessonCommand(
  name: string | undefined,
  options: LessonOptions,
  around: LessonAround,
): Promise<number> {
  const complain = (lines: readonly string[]): number => {
    for (const line of lines) around.stderr.write(`${printable(line)}\n`);
    return UNUSABLE;
  };
  const { learner } = options;
  if (learner !== undefined && !isName(learner))
    return complain([
      `fivesides: "${learner}" is no name for a learner: some signs, without tabs or line breaks.`,
    ]);
  const runs = lessonRunsFile(around.env);
  if (options.scores !== undefined) {
    const kept = readLessonRuns(runs);
    if (kept === null) return complain([`fivesides: ${notLessonRuns(runs)}`]);
    const path = filePath(options.scores, process.cwd());
    const file = { path, shown: options.scores, runs, overwrite: options.overwrite === true };
    const { ok, says } = writeScores(kept, file);
    around.stderr.write(`${printable(says)}\n`);
    return ok ? 0 : UNUSABLE;
  }
  const { practice } = options;
  if (practice !== undefined && name !== undefined)
    return complain([
      `fivesides: an exercise has no further name: leave out "${name}", or --practice to go through that lesson.`,
    ]);
  const onPaper = (options.worksheet ?? options.solutions) !== undefined;
  if (practice === undefined && options.level !== undefined)
    return complain(['fivesides: --level belongs to an exercise: say what it is about, with --practice.']);
  const onScreen = interviewMode({ options, ...around }) === 'screen';
  const isListed = practice === undefined && name === undefined;
  if (isListed && onPaper)
    return complain(['fivesides: say which lesson is to be written for paper; fivesides lesson lists all.']);
  if (isListed) return onScreen ? fillScreen(null, options, around) : listLessons(around, learner);
  const opened =
    practice === undefined ? openLesson(name ?? '', options.catalog ?? []) : openPractice(options);
  if (!opened.ok) return complain(opened.problems);
  if (onPaper) return sheets(opened, options, around);
  if (options.variants !== undefined || (practice === undefined && options.seed !== undefined))
    return complain(['fivesides: --seed and --variants are for --worksheet and --solutions.']);
  return onScreen ? fillScreen(opened, options, around) : lineByLine(opened, options, around);
}

async function fillScreen(
  opened: OpenedForUse | null,
  options: LessonOptions,
  around: LessonAround,
): Promise<number> {
  const { lessonOnScreen } = await import('./lesson-on-screen.ts');
  const shown = {
    catalog: options.catalog ?? [],
    ascii: options.ascii === true,
    color: options.color ?? 'auto',
    units: options.units ?? 'mm',
    learner: options.learner,
    isClass: options.forClass === true,
  };
  // a terminal on both sides was made sure of
  const { stdin, stdout, env } = around as LessonAround & {
    stdin: NodeJS.ReadStream;
    stdout: NodeJS.WriteStream;
  };
  return lessonOnScreen(opened, shown, { stdin, stdout, env });
}

async function lineByLine(
  { name, ready, again }: OpenedForUse,
  options: LessonOptions,
  { env, stdin, stdout, stderr }: LessonAround,
): Promise<number> {
  if (again !== null) stdout.write(`${printable(again)}\n\n`);
  const runs = lessonRunsFile(env);
  const key = runKey(name, options.learner);
  const lines = typedLines(stdin);
  const shell = {
    lines,
    print: (text: string) => void stdout.write(text),
    look: () => ({
      width: columnsOf(stdout),
      ascii: options.ascii === true,
      units: options.units ?? 'mm',
    }),
    echo: stdin.isTTY !== true,
  };
  const told = new Set<string>();
  const tell = (sentence: string | null): void => {
    if (sentence === null || told.has(sentence)) return;
    told.add(sentence);
    stderr.write(`${printable(`fivesides: ${sentence}`)}\n`);
  };
  try {
    if (options.forClass === true) {
      const classes = classRunsFile(env);
      const start = classBegunAt(readClassRuns(classes)?.[key], ready.keys.length);
      await classShell(ready, start, { ...shell, keep: (run) => tell(keepClassRun(classes, key, run)) });
    } else {
      const start = begunAt(readLessonRuns(runs)?.[key], ready.keys.length);
      await lessonShell(ready, start, { ...shell, keep: (run) => tell(keepLessonRun(runs, key, run)) });
    }
  } finally {
    lines.close();
  }
  return 0;
}

/** Writes the lesson, or as many exercises as are asked for, for paper. */
function sheets(
  { paper, seed, another, inputs }: OpenedForUse,
  options: LessonOptions,
  { stderr }: LessonAround,
): number {
  const say = (lines: readonly string[]): void => {
    for (const line of lines) stderr.write(`${printable(line)}\n`);
  };
  const numbers = sheetNumbers(options);
  if (!numbers.ok) {
    say([numbers.why]);
    return UNUSABLE;
  }
  const drawn = seed === null ? numbers.value : { ...numbers.value, seed };
  const written = writeSheets(
    paper,
    another,
    { ...filesOf(options), ...drawn, units: options.units ?? 'mm' },
    { inputs, overwrite: options.overwrite === true },
    process.cwd(),
  );
  say(written.ok ? written.says : written.why);
  return written.ok ? 0 : UNUSABLE;
}

const filesOf = ({ worksheet, solutions }: LessonOptions) => ({
  ...(worksheet === undefined ? {} : { worksheet }),
  ...(solutions === undefined ? {} : { solutions }),
});

const LONGEST_NAME = 80;

/** A name that can stand in a line. */
const isName = (text: string): boolean =>
  text.trim() !== '' && text.length <= LONGEST_NAME && printable(text) === text;

function listLessons({ stdout, env }: LessonAround, learner: string | undefined): number {
  for (const { name, title, reached } of lessonsWithReached(env, learner)) {
    const state = reached === '' ? '' : ` (${reached})`;
    stdout.write(`${printable(`${name.padEnd(NAME_WIDTH)}${title}${state}`)}\n`);
  }
  return 0;
}

const NAME_WIDTH = 22;
