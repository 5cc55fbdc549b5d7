import { setImmediate as nextTurn } from 'node:timers/promises';
import { printable } from '../../documents/printable.ts';
import { liveLine } from '../../report/live-line.ts';
import { withoutBar } from '../../report/range-bar.ts';
import type { TextView } from '../../report/screen-lines.ts';
import { liveOf } from '../../session/live.ts';
import { screenOf } from '../../session/screen.ts';
import type { Effect, Event, Place, Session } from '../../session/session.ts';
import { step } from '../../session/step.ts';
import { NOTHING_TO_UNDO, type Past, remembered, undo } from '../../session/undo.ts';
import type { World } from '../../session/world.ts';
import { readCommand } from './command.ts';
import type { Left } from './farewell.ts';
import { paragraph } from './paragraph.ts';
import { feedbackLines, promptOf, screenLines } from './print-screen.ts';
import { helpLines, whyLines } from './print-why.ts';
import type { TypedLines } from './typed-lines.ts';

/** What the shell needs from outside. */
export interface Surroundings {
  readonly lines: TypedLines;
  readonly print: (text: string) => void;
  /** columns, now */
  readonly width: () => number;
  /** lines come from a pipe: they are shown, as a terminal would; so are lines that were typed ahead */
  readonly echo: boolean;
  /** Does what the session asks for; what became of it, where the session wants to know. */
  readonly perform: (effect: Exclude<Effect, { kind: 'finish' }>, session: Session) => readonly Event[];
  /** The result in words. */
  readonly resultText: (session: Session) => string;
  /** A view of the result in words. */
  readonly viewText: (session: Session, view: TextView) => string;
  /** What a name means, in words. */
  readonly explainText: (session: Session, name: string) => string;
  /** What is tried against the answers of the interview, or the variants beside them; empty where it stands at neither. */
  readonly trialText: (session: Session) => string;
}

/** Asks, line by line, until the interview is finished or left. Only ever adds lines. */
export async function plainShell(start: Session, world: World, around: Surroundings): Promise<Left> {
  let session = start;
  let past: Past = [];
  await show(session, null, world, around);
  for (;;) {
    const typed = await around.lines.next();
    if ('end' in typed) {
      around.print('\n');
      const ending: Left['ending'] =
        typed.end === 'signal' ? { how: 'signal', signal: typed.signal } : { how: 'input' };
      return { session, ending };
    }
    if (around.echo || typed.early) around.print(`${typed.line}\n`);
    const command = readCommand(typed.line, takesText(session, world));
    if (command.kind === 'quit') return { session, ending: { how: 'quit' } };
    if (command.kind === 'say') {
      const screen = screenOf(session, world);
      const width = around.width();
      say(command.what === 'why' ? whyLines(screen, width) : helpLines(width), around);
      around.print(promptOf(screen));
      continue;
    }
    if (command.kind === 'explain') {
      around.print('\n');
      say(lineByLine(around.explainText(session, command.name)), around);
      around.print(promptOf(screenOf(session, world)));
      continue;
    }
    if (command.kind === 'view') {
      around.print('\n');
      say(lineByLine(around.viewText(session, command.view)), around);
      around.print(promptOf(screenOf(session, world)));
      continue;
    }
    const before = session.at;
    if (command.kind === 'undo') {
      const taken = undo(past, session, world);
      const words = taken?.words ?? NOTHING_TO_UNDO;
      past = taken?.past ?? past;
      session = { ...(taken?.session ?? session), note: { kind: 'said', words } };
      if (taken !== null) around.perform({ kind: 'save' }, session);
      await show(session, before, world, around);
      continue;
    }
    const turned = doAll(session, command.events, world, around);
    past = remembered(past, session, turned.session);
    session = turned.session;
    if (turned.finished) {
      say(feedbackLines(screenOf(session, world), around.width()), around);
      return { session, ending: { how: 'finished' } };
    }
    await show(session, before, world, around);
  }
}

/** Event by event; what the session asks for is done before anything of it is shown. */
function doAll(start: Session, events: readonly Event[], world: World, around: Surroundings) {
  let session = start;
  let finished = false;
  const queue = [...events];
  for (let event = queue.shift(); event !== undefined; event = queue.shift()) {
    const [next, effects] = step(session, event, world);
    session = next;
    for (const effect of effects) {
      if (effect.kind === 'finish') finished = true;
      else queue.push(...around.perform(effect, session));
    }
    if (session.note?.kind === 'error') break;
  }
  return { session, finished };
}

/** What the last event brought about, and what is asked now. The same question is not asked in full again. */
async function show(
  session: Session,
  before: Place | null,
  world: World,
  around: Surroundings,
): Promise<void> {
  const screen = screenOf(session, world);
  const width = around.width();
  say(feedbackLines(screen, width), around);
  // what is tried tells that in full
  const live = screen.kind === 'trial' ? null : liveOf(session, world);
  if (live !== null) say(paragraph(liveLine(live), width), around);
  // What was typed while this was worked out is read now, and so told from what answers the prompt. The first turn
  // ends the one that is running, the second has looked for input.
  await nextTurn();
  await nextTurn();
  const isSame = before !== null && JSON.stringify(before) === JSON.stringify(session.at);
  if (!isSame || screen.error === null) {
    around.print('\n');
    if (screen.kind === 'result' && !isSame) {
      // what a trial changes was said while it was tried
      const wasTried = before !== null && TRIED.has(before.at) && session.trial === null;
      if (wasTried) say(paragraph(STANDS, width), around);
      else say(lineByLine(around.resultText(session)), around);
    }
    if (WITH_TABLE.has(screen.kind) && screen.error === null)
      say(lineByLine(around.trialText(session)), around);
    else if (session.trial !== null && screen.kind !== 'naming') say(paragraph(IS_TRIED, width), around);
    say(screenLines(screen, width), around);
  }
  around.print(promptOf(screen));
}

const WITH_TABLE: ReadonlySet<string> = new Set(['trial', 'variants']);
const TRIED: ReadonlySet<string> = new Set(['trial', 'naming', 'variants']);
const STANDS = 'You are at the result again; "show" prints it.';
const IS_TRIED = 'What if: this is tried, and no answer of the interview.';

const say = (lines: readonly string[], around: Surroundings): void => {
  for (const line of lines) around.print(`${readAloud(line)}\n`);
};

/** Without signs, boxes and blocks, which are read aloud badly: the words beside them say the same. */
const readAloud = (line: string): string =>
  withoutBar(printable(line).replace(/[\u2500-\u28ff] ?/g, '')).trimEnd();

const lineByLine = (text: string): readonly string[] => [...text.trimEnd().split('\n'), ''];

/** Whether free text is asked for, so that a line that begins like a command may be no command. */
function takesText(session: Session, world: World): boolean {
  const screen = screenOf(session, world);
  return screen.kind === 'naming' || (screen.kind === 'question' && screen.input.kind === 'text');
}
