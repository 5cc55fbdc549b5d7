import type { Readable, Writable } from 'node:stream';
import { printable } from '../documents/printable.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { runKey } from '../teaching/lessons/kept-runs.ts';
import { readLesson } from '../teaching/lessons/read-lesson.ts';
import { LESSON_START } from '../teaching/lessons/run-lesson.ts';
import { filePath } from './file-path.ts';
import { keepLessonRun, lessonRunsFile, notLessonRuns, readLessonRuns } from './lesson-runs.ts';
import { writeScores } from './lesson-scores.ts';
import { sheetNumbers, writeSheets } from './lesson-sheets.ts';
import { fileOfLesson, lessonNames, type Opened, openLesson } from './open-lesson.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { lessonShell } from './plain/lesson-shell.ts';
import { columnsOf } from './plain/say.ts';
import { typedLines } from './plain/typed-lines.ts';
import { openPractice, type PracticeOptions } from './practice.ts';

export interface LessonOptions extends PracticeOptions {
  readonly ascii?: boolean;
  readonly units?: LengthUnits;
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
  readonly stdout: Writable & { readonly columns?: number };
  readonly stderr: Writable;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * `fivesides lesson`: lists the lessons that come with the program; with a name, or a file of one's own, goes through it line
 * by line. With `--practice` an exercise is drawn instead. With `--worksheet` and `--solutions` it is written for paper, with `--scores` the points
 * that are kept as a table. Exit code 0; 2 where there is no such lesson, or it cannot be used: one line per problem.
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
  if (practice === undefined && name === undefined)
    return onPaper
      ? complain(['fivesides: say which lesson is to be written for paper; fivesides lesson lists all.'])
      : listLessons(around);
  const opened =
    practice === undefined ? openLesson(name ?? '', options.catalog ?? []) : openPractice(options);
  if (!opened.ok) return complain(opened.problems);
  if (onPaper) return sheets(opened, options, around);
  if (options.variants !== undefined || (practice === undefined && options.seed !== undefined))
    return complain(['fivesides: --seed and --variants are for --worksheet and --solutions.']);
  if (opened.again !== null) around.stdout.write(`${printable(opened.again)}\n\n`);
  const { ready } = opened;
  const key = runKey(opened.name, learner);
  const told = new Set<string>();
  const tellOnce = (sentence: string): void => {
    if (!told.has(sentence)) around.stderr.write(`${printable(`fivesides: ${sentence}`)}\n`);
    told.add(sentence);
  };
  const lines = typedLines(around.stdin);
  try {
    await lessonShell(ready, readLessonRuns(runs)?.[key] ?? LESSON_START, {
      lines,
      print: (text) => void around.stdout.write(text),
      look: () => ({
        width: columnsOf(around.stdout),
        ascii: options.ascii === true,
        units: options.units ?? 'mm',
      }),
      echo: around.stdin.isTTY !== true,
      keep: (run) => {
        const sentence = keepLessonRun(runs, key, run);
        if (sentence !== null) tellOnce(sentence);
      },
    });
  } finally {
    lines.close();
  }
  return 0;
}

/** Writes the lesson, or as many exercises as are asked for, for paper. */
function sheets(
  { paper, seed, another, inputs }: Extract<Opened, { ok: true }>,
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

function listLessons({ stdout }: LessonAround): number {
  for (const name of lessonNames()) {
    const lesson = readLesson(fileOfLesson(name));
    stdout.write(printable(`${name.padEnd(NAME_WIDTH)}${lesson.ok ? lesson.value.title : ''}`));
    stdout.write('\n');
  }
  return 0;
}

const NAME_WIDTH = 22;
