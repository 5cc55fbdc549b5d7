import type { Catalog } from '../catalog/catalog.ts';
import { describeProblem } from '../documents/problem.ts';
import { readAnswers } from '../questions/read-answers.ts';
import { isAnswered } from '../session/kept.ts';
import { opened } from '../session/opened.ts';
import type { Session } from '../session/session.ts';
import { type Ask, createWorld, type Decide, type World } from '../session/world.ts';
import type { ColorWanted } from '../ui/shell/color.ts';
import type { ScreenLeft } from '../ui/shell/run.ts';
import { type Disk, perform } from './plain/perform.ts';
import type { SessionKeeper } from './session-keeper.ts';

export interface ScreenAround {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly ascii: boolean;
  readonly color: ColorWanted;
  readonly disk: Omit<Disk, 'warn'>;
  readonly catalog: Catalog;
  /** null: decided on a thread of its own */
  readonly engine: { readonly decide: Decide; readonly ask: Ask | null } | null;
}

/** Runs the full-screen interview. Everything of it is loaded here, and only here. */
export async function askOnScreen(
  begin: (world: World) => Session,
  isNew: boolean,
  around: ScreenAround,
): Promise<ScreenLeft & { readonly world: World }> {
  const { settleEnvironment, usesColor } = await import('../ui/shell/color.ts');
  const color = usesColor(around.color, around.env);
  settleEnvironment(color);
  const { runScreen } = await import('../ui/shell/run.ts');
  const { catalog, disk, ascii, stdin, stdout } = around;
  let redo: () => void = () => undefined;
  const judge =
    around.engine === null
      ? (await import('../ui/judging/worker-judge.ts')).workerJudge(catalog, () => redo())
      : null;
  const world = createWorld(
    catalog,
    around.engine?.decide ?? judge?.decide ?? never,
    around.engine === null ? (judge?.ask ?? null) : around.engine.ask,
  );
  try {
    const left = await runScreen(begin(world), isNew, {
      stdin,
      stdout,
      world,
      ascii,
      color,
      get sessionFile() {
        return disk.keeper.file;
      },
      unsaved: ({ kept }) =>
        notWhereMeant(disk.keeper) ?? (isAnswered(kept) ? null : 'Nothing is answered yet.'),
      perform: (effect, now) => perform(effect, now, world, { ...disk, warn: toldOnTheScreen }),
      open: (file, session) => openAnswers(file, session, world, catalog),
      judge,
      onDecision: (next) => {
        redo = next;
      },
    });
    return { ...left, world };
  } finally {
    judge?.close();
  }
}

/** It is asked for with every frame instead. */
const toldOnTheScreen = (): void => undefined;

/** That the answers are not saved, or not where they were, in words that begin so; null: they are. */
function notWhereMeant({ unsaved, moved }: SessionKeeper): string | null {
  if (unsaved !== null) return `NOT saved. ${unsaved}`;
  return moved === null ? null : `NOT in the same file. ${moved}`;
}

const never: Decide = () => {
  throw new Error('nobody decides');
};

/** An answers file as an interview to go on with; otherwise the first thing that is wrong with it. */
function openAnswers(
  file: string,
  session: Session,
  world: World,
  catalog: Catalog,
): Session | { readonly why: string } {
  if (file.trim() === '') return { why: 'Type the name of an answers file.' };
  const read = readAnswers(file.trim(), undefined, catalog);
  if (!read.ok) {
    const [first, ...more] = read.problems;
    if (first === undefined) return { why: 'That file cannot be read.' };
    const others = more.length === 0 ? '' : ` There are ${more.length} more problems.`;
    return { why: `${describeProblem(first)}${others}` };
  }
  return opened(read.value, session, world);
}
