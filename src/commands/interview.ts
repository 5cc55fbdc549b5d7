import { resolve } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import type { Catalog } from '../catalog/catalog.ts';
import { readCatalog } from '../catalog/read.ts';
import { describeProblem, type Reading } from '../documents/problem.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { plainAscii } from '../report/exports/plain-ascii.ts';
import { markdownReport, textReport } from '../report/index.ts';
import { decide } from '../rules/decide.ts';
import type { Saved } from '../session/saved.ts';
import type { Session } from '../session/session.ts';
import { newSession, offered, resumed } from '../session/start.ts';
import { createWorld, type Decide, type World } from '../session/world.ts';
import { demoCatalog } from './demo-catalog.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { farewell, SIGNAL_CODES } from './plain/farewell.ts';
import { greet } from './plain/greet.ts';
import { perform } from './plain/perform.ts';
import { columnsOf } from './plain/say.ts';
import { type Left, plainShell } from './plain/shell.ts';
import { type EndingSignal, typedLines } from './plain/typed-lines.ts';
import { readSessionFile, usualSessionFile } from './session-file.ts';

export interface InterviewOptions {
  /** folders; none: the demo catalog, or what the saved interview used */
  readonly catalog?: readonly string[];
  readonly session?: string;
  readonly resume?: boolean;
  /** line by line, also without a terminal */
  readonly plain?: boolean;
  /** false: never ask */
  readonly input?: boolean;
  readonly units?: LengthUnits;
  readonly ascii?: boolean;
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
  readonly text: typeof textReport;
  readonly markdown: typeof markdownReport;
}

const REAL: Engine = {
  readCatalog: (folders) => readCatalog(folders.length === 0 ? [demoCatalog()] : folders),
  decide,
  text: textReport,
  markdown: markdownReport,
};

/** Asks line by line and gives the exit code. Everything answered is saved before it is shown as taken. */
export async function interview(
  options: InterviewOptions,
  around: Around,
  engine: Engine = REAL,
): Promise<number> {
  const refuse = (...lines: readonly string[]): number => {
    for (const line of lines) around.stderr.write(`${line}\n`);
    return UNUSABLE;
  };
  if (!canAsk(options, around)) return refuse(NO_TERMINAL);
  const sessionFile =
    options.session === undefined ? usualSessionFile(around.env) : resolve(around.cwd, options.session);
  const found = readSessionFile(sessionFile);
  if (found.found === 'unusable') {
    return refuse(
      `fivesides: ${found.why}. It is left as it is; move it away, or name another file with --session.`,
    );
  }
  const saved = found.found === 'interview' ? found.saved : null;
  if (saved === null && options.resume === true) {
    return refuse(
      `fivesides: there is no saved interview in ${sessionFile}; leave --resume out to begin one.`,
    );
  }
  const folders = foldersOf(options, around, saved);
  const catalog = engine.readCatalog(folders);
  if (!catalog.ok) return refuse(...catalog.problems.map(describeProblem));
  const world = createWorld(catalog.value, engine.decide);
  const session = sessionFor(options, saved, world, folders);
  greet(session, catalog.value, around.stdout);
  const left = await ask(session, world, sessionFile, options, around, engine);
  return farewell(left, world, { sessionFile, named: options.session ?? null }, around.stdout);
}

const NO_TERMINAL =
  'fivesides: the interview needs a terminal; "fivesides decide ANSWERS" decides from a file, and --plain asks line by line anywhere.';

function canAsk({ plain, input }: InterviewOptions, { stdin, stdout, env }: Around): boolean {
  if (input === false) return false;
  if (plain === true) return true;
  const isTerminal = stdin.isTTY === true && stdout.isTTY === true;
  const isSimple = env.TERM === 'dumb' && env.ACCESSIBLE !== '1';
  return isTerminal && !isSimple;
}

const foldersOf = (
  { catalog = [] }: InterviewOptions,
  { cwd }: Around,
  saved: Saved | null,
): readonly string[] =>
  catalog.length > 0 ? catalog.map((folder) => resolve(cwd, folder)) : (saved?.catalogs ?? []);

function sessionFor(
  { resume, units = null }: { readonly resume?: boolean; readonly units?: LengthUnits | null },
  saved: Saved | null,
  world: World,
  folders: readonly string[],
): Session {
  if (saved === null) return newSession(world, folders, units);
  return resume === true ? resumed(saved, world, folders, units) : offered(saved, folders, units);
}

/** Runs the shell with the signals caught, and lets go of everything afterwards. */
async function ask(
  session: Session,
  world: World,
  sessionFile: string,
  options: InterviewOptions,
  around: Around,
  engine: Engine,
): Promise<Left> {
  const { stdin, stdout, cwd } = around;
  const lines = typedLines(stdin);
  const width = () => columnsOf(stdout);
  const handlers = (Object.keys(SIGNAL_CODES) as EndingSignal[]).map((signal) => {
    const handler = () => lines.stop(signal);
    process.on(signal, handler);
    return { signal, handler };
  });
  stdout.on('error', () => lines.stop('SIGHUP'));
  const disk = {
    markdown: engine.markdown,
    sessionFile,
    cwd,
    warn: (sentence: string) => void around.stderr.write(`fivesides: ${sentence}\n`),
  };
  try {
    return await plainShell(session, world, {
      lines,
      print: (text) => void stdout.write(options.ascii === true ? plainAscii(text) : text),
      width,
      echo: stdin.isTTY !== true,
      perform: (effect, now) => perform(effect, now, world, disk),
      resultText: ({ kept }) => {
        const decision = world.decision(kept);
        return decision === null
          ? ''
          : engine.text(decision, { width: width(), ascii: options.ascii === true });
      },
    });
  } finally {
    lines.close();
    for (const { signal, handler } of handlers) process.off(signal, handler);
  }
}
