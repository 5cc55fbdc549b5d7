import { resolve } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import type { Catalog } from '../catalog/catalog.ts';
import { readCatalog } from '../catalog/read.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem, type Reading } from '../documents/problem.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { answerReport, jsonReport, markdownReport, paperInFile, textReport } from '../report/index.ts';
import { askingOf } from '../rules/asking/asking.ts';
import { decide } from '../rules/decide.ts';
import { type Saved, savedOf } from '../session/saved.ts';
import type { Session } from '../session/session.ts';
import { newSession, offered, resumed } from '../session/start.ts';
import { withoutTrial } from '../session/trial.ts';
import { createWorld, type Decide, type World } from '../session/world.ts';
import { ready } from '../ui/state/not-yet.ts';
import { demoCatalog } from './demo-catalog.ts';
import { interviewMode } from './interview-mode.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { askLineByLine } from './plain/ask.ts';
import { farewell, type Left } from './plain/farewell.ts';
import { greet } from './plain/greet.ts';
import type { Disk } from './plain/perform.ts';
import { columnsOf } from './plain/say.ts';
import { withParts } from './read-table.ts';
import { readSessionFile, usualSessionFile } from './session-file.ts';
import { SessionKeeper } from './session-keeper.ts';

export interface InterviewOptions {
  /** folders; none: the demo catalog, or what the saved interview used */
  readonly catalog?: readonly string[];
  readonly session?: string;
  readonly resume?: boolean;
  /** every question, in a fixed order */
  readonly askAll?: boolean;
  /** a table of parts to begin with */
  readonly parts?: string;
  /** line by line, also without a terminal */
  readonly plain?: boolean;
  /** false: never ask */
  readonly input?: boolean;
  readonly units?: LengthUnits;
  readonly ascii?: boolean;
  readonly color?: 'auto' | 'always' | 'never';
}

/** The world around the command, so that tests can stand in for it. */
export interface Around {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly stdout: Writable & { readonly isTTY?: boolean; readonly columns?: number };
  readonly stderr: Writable;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly cwd: string;
}

/** Where the goods come from, what judges them, and what puts the judgment into words. */
export interface Engine {
  /** no folder: the demo catalog */
  readonly readCatalog: (folders: readonly string[]) => Reading<Catalog>;
  readonly decide: Decide;
  /** which answers can still change the result; null: nobody says */
  readonly ask: typeof askingOf | null;
  readonly text: typeof textReport;
  readonly markdown: typeof markdownReport;
  readonly json: typeof jsonReport;
  readonly paper: typeof paperInFile;
}

const REAL: Engine = {
  readCatalog: (folders) => readCatalog(folders.length === 0 ? [demoCatalog()] : folders),
  decide,
  ask: askingOf,
  text: textReport,
  markdown: markdownReport,
  json: jsonReport,
  paper: paperInFile,
};

/** Asks, on the whole screen or line by line, and gives the exit code. Everything answered is saved before it is shown as taken. */
export async function interview(
  options: InterviewOptions,
  around: Around,
  engine: Engine = REAL,
): Promise<number> {
  const refuse = async (...lines: readonly string[]): Promise<number> => {
    // an early frame may stand on it
    if (around.stdout.isTTY === true) (await import('../ui/shell/terminal.ts')).leaveTerminal();
    for (const line of lines) around.stderr.write(`${printable(line)}\n`);
    return UNUSABLE;
  };
  const mode = interviewMode({ options, ...around });
  if (mode === null) return refuse(NO_TERMINAL);
  const sessionFile =
    options.session === undefined ? usualSessionFile(around.env) : resolve(around.cwd, options.session);
  const found = readSessionFile(sessionFile);
  if (found.found === 'unusable') {
    return refuse(
      `fivesides: ${found.why}. It is left as it is; move it away, or name another file with --session.`,
    );
  }
  const saved = found.found === 'interview' ? found.saved : null;
  const keeper = new SessionKeeper(sessionFile, found.found === 'interview' ? found.text : null);
  const tell = (sentence: string): void =>
    void around.stderr.write(`${printable(`fivesides: ${sentence}`)}\n`);
  if (saved === null && options.resume === true) {
    return refuse(
      `fivesides: there is no saved interview in ${sessionFile}; leave --resume out to begin one.`,
    );
  }
  const folders = foldersOf(options, around, saved);
  const catalog = engine.readCatalog(folders);
  if (!catalog.ok) return refuse(...catalog.problems.map(describeProblem));
  let begin = (world: World): Session => sessionFor(options, saved, world, folders);
  if (options.parts !== undefined) {
    if (saved !== null && options.resume !== true) return refuse(whereTo(sessionFile));
    const world = createWorld(catalog.value, engine.decide);
    const begun = withParts(options.parts, begin(world), world, around.cwd);
    if (!begun.ok) return refuse(`fivesides: ${begun.why}`);
    begin = () => begun.session;
    const told = keeper.save(savedOf(begun.session));
    if (told !== null) tell(told);
  }
  const { left: leftAt, world } = await (mode === 'screen' ? onScreen : lineByLine)(begin, catalog.value, {
    options,
    around,
    engine,
    keeper,
    tell,
  });
  // what is tried is kept in the file, and no answer yet
  const left: Left = { ...leftAt, session: withoutTrial(leftAt.session) };
  if (mode === 'screen') sayAnswer(left, world, around, options.ascii === true);
  const told = keeper.settle();
  if (told !== null) tell(told);
  // a file of another name is named, whatever the user did
  const named = keeper.file === sessionFile ? (options.session ?? null) : keeper.file;
  return farewell(
    left,
    world,
    { sessionFile: keeper.file, named, isSaved: keeper.unsaved === null },
    around.stdout,
  );
}

interface Asking {
  readonly options: InterviewOptions;
  readonly around: Around;
  readonly engine: Engine;
  readonly keeper: SessionKeeper;
  /** says a sentence beside the interview */
  readonly tell: (sentence: string) => void;
}

type Asked = { readonly left: Left; readonly world: World };

const diskOf = ({ engine, around, keeper }: Asking): Omit<Disk, 'warn'> => ({
  markdown: engine.markdown,
  json: engine.json,
  paper: engine.paper,
  keeper,
  cwd: around.cwd,
});

async function lineByLine(
  begin: (world: World) => Session,
  catalog: Catalog,
  asking: Asking,
): Promise<Asked> {
  const { options, around, engine, tell } = asking;
  const world = createWorld(catalog, engine.decide, engine.ask);
  const session = begin(world);
  greet(session, catalog, around.stdout);
  const left = await askLineByLine(session, world, {
    stdin: around.stdin,
    stdout: around.stdout,
    ascii: options.ascii === true,
    disk: {
      ...diskOf(asking),
      warn: tell,
    },
    text: engine.text,
  });
  return { left, world };
}

async function onScreen(begin: (world: World) => Session, catalog: Catalog, asking: Asking): Promise<Asked> {
  const { options, around, engine } = asking;
  const { askOnScreen } = await import('./ask-on-screen.ts');
  const { world, ...left } = await askOnScreen(
    begin,
    options.resume !== true && options.parts === undefined,
    {
      // a terminal on both sides was made sure of
      stdin: around.stdin as NodeJS.ReadStream,
      stdout: around.stdout as NodeJS.WriteStream,
      env: around.env,
      ascii: options.ascii === true,
      color: options.color ?? 'auto',
      disk: diskOf(asking),
      catalog,
      engine: engine === REAL ? null : engine,
    },
  );
  return { left, world };
}

/** The result in a sentence, so that it stays on the normal screen. */
function sayAnswer({ session, ending }: Left, world: World, { stdout }: Around, ascii: boolean): void {
  const isResult = ending.how === 'finished' || session.at.at === 'result';
  // a signal does not wait for what is still being worked out
  const decision = isResult ? (ready(() => world.decision(session.kept)) ?? null) : null;
  if (decision !== null) stdout.write(`${answerReport(decision, { width: columnsOf(stdout), ascii })}\n`);
}

const NO_TERMINAL =
  'fivesides: the interview needs a terminal; "fivesides decide ANSWERS" decides from a file, and --plain asks line by line anywhere.';

const whereTo = (sessionFile: string): string =>
  `fivesides: there is a saved interview in ${sessionFile}; --resume adds the parts to it, --session FILE begins another one.`;

const foldersOf = (
  { catalog = [] }: InterviewOptions,
  { cwd }: Around,
  saved: Saved | null,
): readonly string[] =>
  catalog.length > 0 ? catalog.map((folder) => resolve(cwd, folder)) : (saved?.catalogs ?? []);

function sessionFor(
  {
    resume,
    askAll,
    units = null,
  }: {
    readonly resume?: boolean;
    readonly askAll?: boolean;
    readonly units?: LengthUnits | null;
  },
  saved: Saved | null,
  world: World,
  folders: readonly string[],
): Session {
  if (saved === null) return newSession(world, folders, units, askAll === true ? 'all' : 'needed');
  const asked: Saved = askAll === true ? { ...saved, asks: 'all' } : saved;
  return resume === true ? resumed(asked, world, folders, units) : offered(asked, folders, units);
}
