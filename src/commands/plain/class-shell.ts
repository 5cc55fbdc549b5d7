import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import { type Changeable, changeableOf } from '../../teaching/lessons/changeable.ts';
import { CLASS_START, type ClassEvent, type ClassRun, runClass } from '../../teaching/lessons/class-run.ts';
import { classLines, trialLines } from '../../teaching/lessons/class-words.ts';
import { type ReadyLesson, stepAt } from '../../teaching/lessons/run-lesson.ts';
import type { LinesAround } from './lesson-shell.ts';
import { paragraph } from './paragraph.ts';
import { explainLines } from './print-explain.ts';

const KEYS =
  'Enter shows the next thing; back, next step and step before go there. What the room says may be typed as long as nothing of the way is shown. "what if" lists the given numbers, "what if NUMBER = VALUE" tries one of them otherwise, drop forgets it; explain, quit.';

const goesOn = ({ index }: ClassRun): string =>
  `The class goes on at step ${index + 1}; back and "step before" go back.`;

interface ClassSurroundings extends LinesAround {
  /** called after every event, so that nothing is lost where it is left */
  readonly keep: (run: ClassRun) => void;
}

/** Shows a lesson to a class line by line, until it is at its end or is left. Only ever adds lines. */
export async function classShell(
  ready: ReadyLesson,
  start: ClassRun,
  around: ClassSurroundings,
): Promise<void> {
  const { look } = around;
  const say = (lines: readonly string[]): void => {
    for (const line of lines) around.print(`${line}\n`);
  };
  const paragraphs = (all: readonly (readonly string[])[]): void => say(all.flatMap((each) => [...each, '']));
  let run = start;
  say([...paragraph(KEYS, look().width), '']);
  if (run !== CLASS_START) say([...paragraph(goesOn(run), look().width), '']);
  paragraphs(classLines(ready, run, look()));
  while (run.index < ready.keys.length) {
    around.print('> ');
    const typed = await around.lines.next();
    if ('end' in typed) break;
    if (around.echo || typed.early) around.print(`${typed.line}\n`);
    const line = typed.line.trim();
    if (line === 'quit' || line === 'exit') break;
    const [, name] = /^explain\b\s*(.*)$/i.exec(line) ?? [];
    if (name !== undefined) {
      say(explainLines(name, look(), look().units));
      continue;
    }
    const numbers = changesOf(ready, run);
    const event = eventOf(line, look().units, numbers);
    if (event === null) {
      say([...changeLines(numbers, look()), '']);
      continue;
    }
    run = runClass(ready, run, event);
    around.keep(run);
    if (run.refused !== null) say([...paragraph(run.refused, look().width), '']);
    else paragraphs([...classLines(ready, run, look()), ...trialLines(ready, run, look())]);
  }
}

const changesOf = (ready: ReadyLesson, run: ClassRun): readonly Changeable[] => {
  const key = stepAt(ready, run)?.key;
  return key === undefined ? [] : changeableOf(key, ready);
};

const WORDS: Readonly<Record<string, Exclude<ClassEvent['type'], 'guess' | 'try'>>> = {
  '': 'next',
  next: 'next',
  back: 'back',
  'next step': 'next step',
  'step before': 'step before',
  drop: 'drop',
};

/** What a line asks for; null: the numbers that can be tried otherwise. */
function eventOf(line: string, units: LengthUnits, numbers: readonly Changeable[]): ClassEvent | null {
  const word = WORDS[line.toLowerCase()];
  if (word !== undefined) return { type: word };
  const [isTry, rest = ''] = /^what if\b\s*(.*)$/i.exec(line) ?? [];
  if (isTry === undefined) return { type: 'guess', text: line, units };
  const [, which = '', typed = ''] = /^(.*?)\s*=\s*(.*)$/.exec(rest) ?? [];
  const wanted = which.toLowerCase();
  const of =
    numbers[Number(which) - 1] ??
    numbers.find(({ symbol, words }) => symbol === which || words.toLowerCase() === wanted);
  return of === undefined ? null : { type: 'try', of, typed, units };
}

const changeLines = (
  numbers: readonly Changeable[],
  { width, units }: { readonly width: number; readonly units: LengthUnits },
): readonly string[] =>
  numbers.length === 0
    ? ['No number is given here that could be another one.']
    : numbers.flatMap(({ symbol, words, value, unit }, index) => {
        const now = formatQuantity(value, unit, { shownIn: units, beside: true, grouped: 'plain' });
        return paragraph(`${index + 1}  ${symbol === '' ? '' : `${symbol}: `}${words}, ${now}`, width);
      });
