import type { LengthUnits } from '../../quantities/kinds.ts';
import {
  endLines,
  feedbackLines,
  goesOnLines,
  hintLines,
  lessonHead,
  revealedLines,
  stepLines,
} from '../../teaching/lessons/lesson-words.ts';
import {
  LESSON_START,
  type LessonEvent,
  type LessonRun,
  type ReadyLesson,
  runLesson,
} from '../../teaching/lessons/run-lesson.ts';
import { explainLines } from './print-explain.ts';
import type { TypedLines } from './typed-lines.ts';

/** What a shell for lessons needs from outside. */
export interface LinesAround {
  readonly lines: TypedLines;
  readonly print: (text: string) => void;
  readonly look: () => { readonly width: number; readonly ascii: boolean; readonly units: LengthUnits };
  /** lines come from a pipe: they are shown, as a terminal would */
  readonly echo: boolean;
}

interface LessonSurroundings extends LinesAround {
  /** called after every event, so that nothing is lost where it is left */
  readonly keep: (run: LessonRun) => void;
}

const PROMPT: Readonly<Record<LessonRun['phase'], string>> = {
  predict: 'Your prediction > ',
  revealed: 'Enter: go on > ',
  done: '',
};

/** Goes through a lesson line by line until it is at its end or is left. Only ever adds lines. */
export async function lessonShell(
  ready: ReadyLesson,
  start: LessonRun,
  around: LessonSurroundings,
): Promise<LessonRun> {
  const say = (lines: readonly string[]): void => {
    for (const line of lines) around.print(`${line}\n`);
  };
  let run = start;
  say(lessonHead(ready, around.look()));
  if (run !== LESSON_START) say(goesOnLines(run, around.look()));
  if (run.phase === 'predict')
    say([...stepLines(ready, run, around.look()), ...hintLines(ready, run, around.look())]);
  else say(revealedLines(ready, run, around.look()));
  while (run.phase !== 'done') {
    around.print(PROMPT[run.phase]);
    const typed = await around.lines.next();
    if ('end' in typed) break;
    if (around.echo || typed.early) around.print(`${typed.line}\n`);
    const line = typed.line.trim();
    if (line === 'quit' || line === 'exit') break;
    const [, name] = /^explain\b\s*(.*)$/i.exec(line) ?? [];
    if (name !== undefined) {
      say(explainLines(name, around.look(), around.look().units));
      continue;
    }
    const before = run;
    run = runLesson(ready, run, eventOf(line, run, around.look().units));
    around.keep(run);
    if (before.phase === 'predict') say(feedbackLines(ready, run, around.look()));
    if (run.phase === 'revealed' && before.phase === 'predict') say(revealedLines(ready, run, around.look()));
    if (run.index !== before.index && run.phase === 'predict') say(stepLines(ready, run, around.look()));
  }
  around.print('\n');
  if (run.phase === 'done') say(endLines(ready, run, around.look()));
  return run;
}

function eventOf(line: string, { phase }: LessonRun, units: LengthUnits): LessonEvent {
  if (phase === 'revealed') return { type: 'next' };
  const word = line.toLowerCase();
  if (word === 'hint' || word === 'reveal') return { type: word };
  return { type: 'predict', text: line, units };
}
