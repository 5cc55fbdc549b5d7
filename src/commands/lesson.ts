import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { catalogFiles, readCatalog } from '../catalog/read.ts';
import { nearest } from '../documents/nearest.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem } from '../documents/problem.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { runKey } from '../teaching/lessons/kept-runs.ts';
import { readLesson } from '../teaching/lessons/read-lesson.ts';
import { LESSON_START } from '../teaching/lessons/run-lesson.ts';
import { prepareLesson } from '../teaching/lessons/step-key.ts';
import { demoCatalog } from './demo-catalog.ts';
import { filePath } from './file-path.ts';
import { keepLessonRun, lessonRunsFile, notLessonRuns, readLessonRuns } from './lesson-runs.ts';
import { writeScores } from './lesson-scores.ts';
import { sheetNumbers, variantsOf, writeSheets } from './lesson-sheets.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { lessonShell } from './plain/lesson-shell.ts';
import { columnsOf } from './plain/say.ts';
import { typedLines } from './plain/typed-lines.ts';

export interface LessonOptions {
  readonly catalog?: readonly string[];
  readonly ascii?: boolean;
  readonly units?: LengthUnits;
  /** under whose name points are kept */
  readonly learner?: string;
  /** a file for the points that are kept */
  readonly scores?: string;
  /** files for paper: what is asked, and what comes out */
  readonly worksheet?: string;
  readonly solutions?: string;
  readonly seed?: string;
  readonly variants?: string;
  readonly overwrite?: boolean;
}

/** What it reads from and writes to, so that tests can stand in for it. */
export interface LessonAround {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly stdout: Writable & { readonly columns?: number };
  readonly stderr: Writable;
  readonly env: Readonly<Record<string, string | undefined>>;
}

const lessonsFolder = (): string => join(demoCatalog(), 'lessons');

/** Names of the lessons that come with the program. */
const lessonNames = (): readonly string[] =>
  readdirSync(lessonsFolder())
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.slice(0, -'.yaml'.length))
    .sort();

/**
 * `fivesides lesson`: lists the lessons that come with the program; with a name, or a file of one's own, goes through it line
 * by line. With `--worksheet` and `--solutions` it is written for paper, with `--scores` the points that are kept as a table. Exit
 * code 0; 2 where there is no such lesson, or it cannot be used: one line per problem.
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
  const onPaper = (options.worksheet ?? options.solutions) !== undefined;
  if (name === undefined && onPaper)
    return complain(['fivesides: say which lesson is to be written for paper; fivesides lesson lists all.']);
  if (name === undefined) return listLessons(around);
  const file = fileOf(name);
  if (file === null) {
    const meant = nearest(name, lessonNames());
    const hint = meant === undefined ? '' : ` (did you mean ${meant}?)`;
    return complain([`fivesides: there is no lesson "${name}"${hint}; fivesides lesson lists all.`]);
  }
  const given = options.catalog ?? [];
  const folders = given.length === 0 ? [demoCatalog()] : given;
  const catalog = readCatalog(folders);
  const lesson = readLesson(file);
  if (!catalog.ok || !lesson.ok)
    return complain([catalog, lesson].flatMap((each) => (each.ok ? [] : each.problems)).map(describeProblem));
  const ready = prepareLesson(lesson.value, catalog.value);
  if (!ready.ok) return complain(ready.faults.map((fault) => `${file}: ${fault}`));
  if (onPaper) {
    const inputs = [file, ...folders.flatMap(catalogFiles)];
    const numbers = sheetNumbers(options);
    if (!numbers.ok) return complain([numbers.why]);
    const written = writeSheets(
      name,
      variantsOf(ready, lesson.value, catalog.value),
      { ...filesOf(options), ...numbers.value, units: options.units ?? 'mm' },
      { inputs, overwrite: options.overwrite === true },
      process.cwd(),
    );
    if (!written.ok) return complain(written.why);
    for (const line of written.says) around.stderr.write(`${printable(line)}\n`);
    return 0;
  }
  if (options.seed !== undefined || options.variants !== undefined)
    return complain(['fivesides: --seed and --variants are for --worksheet and --solutions.']);
  const key = runKey(name, learner);
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

const filesOf = ({ worksheet, solutions }: LessonOptions) => ({
  ...(worksheet === undefined ? {} : { worksheet }),
  ...(solutions === undefined ? {} : { solutions }),
});

const LONGEST_NAME = 80;

/** A name that can stand in a line. */
const isName = (text: string): boolean =>
  text.trim() !== '' && text.length <= LONGEST_NAME && printable(text) === text;

/** A file of one's own, or a lesson of the program by its name; null: there is none. */
function fileOf(name: string): string | null {
  if (/[\\/.]/.test(name)) return name;
  const file = join(lessonsFolder(), `${name}.yaml`);
  return existsSync(file) ? file : null;
}

function listLessons({ stdout }: LessonAround): number {
  for (const name of lessonNames()) {
    const lesson = readLesson(join(lessonsFolder(), `${name}.yaml`));
    stdout.write(printable(`${name.padEnd(NAME_WIDTH)}${lesson.ok ? lesson.value.title : ''}`));
    stdout.write('\n');
  }
  return 0;
}

const NAME_WIDTH = 22;
