import type { Place } from '../../session/session.ts';
import type { Over, ResultView } from '../state/ui.ts';
import type { Key } from './key.ts';

/** What a key does. */
export type Action =
  | 'up'
  | 'down'
  | 'page-up'
  | 'page-down'
  | 'first'
  | 'last'
  | 'take'
  | 'toggle'
  | 'clear'
  | 'close'
  | 'back'
  | 'not-sure'
  | 'why'
  | 'jump'
  | 'find'
  | 'review'
  | 'parts'
  | 'result'
  | 'undo'
  | 'help'
  | 'add'
  | 'copy'
  | 'rename'
  | 'remove'
  | 'pick'
  | 'quit'
  | 'repaint'
  | 'suspend'
  | `view-${ResultView}`;

/** Where a key is pressed, as far as keys care. */
export interface Situation {
  readonly at: Place['at'];
  readonly over: Over['kind'] | null;
  /** letters are text here */
  readonly typing: boolean;
  /** something is typed already */
  readonly typed: boolean;
  /** rows of the list; 0: none */
  readonly rows: number;
  /** several rows can be taken */
  readonly several: boolean;
  readonly view: ResultView;
  /** something is looked at inside a view */
  readonly looking: boolean;
}

interface Binding {
  readonly action: Action;
  /** as they are handed over: a name, or a character */
  readonly keys: readonly string[];
  /** on the last line: the key, and in a word or two what it does; null: only in the help */
  readonly shown: readonly [key: string, does: string] | null;
  /** in the help: the keys, and what they do */
  readonly help: readonly [keys: string, does: string];
  readonly where: (here: Situation) => boolean;
}

const free = ({ over }: Situation): boolean => over === null;
const letters = (here: Situation): boolean => free(here) && !here.typing;
const idle = (here: Situation): boolean => free(here) && !here.typed;
const listed = ({ rows }: Situation): boolean => rows > 0;
const asked = (here: Situation): boolean => free(here) && here.at === 'question';
const result = (here: Situation): boolean => letters(here) && here.at === 'result';
const reading = (here: Situation): boolean =>
  here.over === 'help' || here.over === 'why' || (here.at === 'result' && here.over === null);
const working = (here: Situation): boolean => here.at !== 'resume';
const lettersBut = (at: Place['at']) => (here: Situation) => letters(here) && here.at !== at && working(here);
const LONG_LIST = 9;

const binding = (
  action: Action,
  keys: readonly string[],
  shown: Binding['shown'],
  help: Binding['help'],
  where: Binding['where'],
): Binding => ({ action, keys, shown, help, where });

/** A view of the result, by one letter. */
const view = (to: ResultView, key: string, does: string, help: string): Binding =>
  binding(`view-${to}`, [key], [key, does], [key, help], result);

/** Every key, in the order in which the last line shows them; the first that fits the situation is taken. */
const KEYMAP: readonly Binding[] = [
  binding('up', ['up'], null, ['↑', 'one row up'], (here) => listed(here) || reading(here)),
  binding('down', ['down'], ['↑↓', 'choose'], ['↓', 'one row down'], listed),
  binding('down', ['down'], ['↑↓', 'scroll'], ['↓', 'one row down'], reading),
  binding('page-up', ['page-up'], null, ['Page up', 'a page up'], (here) => listed(here) || reading(here)),
  binding(
    'page-down',
    ['page-down'],
    null,
    ['Page down', 'a page down'],
    (here) => listed(here) || reading(here),
  ),
  binding('page-down', [' '], null, ['Space', 'a page down'], (here) => reading(here) && !listed(here)),
  binding(
    'first',
    ['home'],
    null,
    ['Home', 'to the first row'],
    (here) => (listed(here) || reading(here)) && !here.typed,
  ),
  binding(
    'last',
    ['end'],
    null,
    ['End', 'to the last row'],
    (here) => (listed(here) || reading(here)) && !here.typed,
  ),
  binding(
    'toggle',
    [' '],
    ['Space', 'mark'],
    ['Space', 'marks a row, or takes the mark away; in the order in which they are marked'],
    (here) => letters(here) && here.several,
  ),
  binding(
    'take',
    ['enter'],
    ['Enter', 'take'],
    ['Enter', 'takes what is highlighted, typed or shown'],
    (here) => (free(here) && here.at !== 'result') || ['start', 'open'].includes(here.over ?? ''),
  ),
  binding(
    'take',
    ['enter'],
    ['Enter', 'go there'],
    ['Enter', 'goes to the row that is highlighted'],
    (here) => listed(here) || here.over === 'jump' || here.over === 'find',
  ),
  binding(
    'close',
    ['escape', 'enter', 'q', '?', 'left', 'shift-tab'],
    ['Esc', 'close'],
    ['Esc', 'closes this'],
    ({ over }) => over === 'help' || over === 'why',
  ),
  binding(
    'close',
    ['escape', 'shift-tab'],
    ['Esc', 'close'],
    ['Esc', 'closes this'],
    ({ over }) => over === 'jump' || over === 'find' || over === 'open',
  ),
  binding(
    'clear',
    ['escape'],
    ['Esc', 'clear'],
    ['Esc', 'takes away what is typed'],
    (here) => free(here) && here.typed,
  ),
  binding(
    'back',
    ['left', 'escape', 'shift-tab'],
    ['←', 'back'],
    ['←, Esc, Shift-Tab', 'to where you were before; nothing is lost'],
    (here) => idle(here) && working(here),
  ),
  binding(
    'back',
    ['shift-tab'],
    null,
    ['Shift-Tab', 'to where you were before'],
    (here) => free(here) && working(here),
  ),
  view('overview', 'o', 'answer', 'the answer, in short'),
  view('why', 'w', 'why', 'every check of the recommendation, by its margin'),
  view('why-not', 'n', 'why not', 'any other arrangement: what fails, by how much'),
  view('compare', 'c', 'compare', 'up to three arrangements side by side'),
  view('stages', 's', 'stages', 'how many came to each stage, and how they were ranked'),
  view('papers', 'p', 'papers', 'writes the report, the decision or the answers to a file'),
  binding(
    'pick',
    ['a'],
    ['a', 'others'],
    ['a', 'chooses what is compared'],
    (here) => result(here) && here.view === 'compare',
  ),
  binding(
    'not-sure',
    ['n'],
    ['n', 'not sure'],
    ['n', 'leaves the question open'],
    (here) => asked(here) && !here.typing,
  ),
  binding('not-sure', ['ctrl-n'], ['^N', 'not sure'], ['Ctrl-N', 'leaves the question open'], asked),
  binding('add', ['a'], ['a', 'add'], ['a', 'adds a part'], (here) => letters(here) && here.at === 'parts'),
  binding(
    'copy',
    ['c'],
    ['c', 'copy'],
    ['c', 'copies the part that is highlighted'],
    (here) => letters(here) && here.at === 'parts',
  ),
  binding(
    'rename',
    ['m'],
    ['m', 'rename'],
    ['m', 'gives the part another name'],
    (here) => letters(here) && here.at === 'parts',
  ),
  binding(
    'remove',
    ['x'],
    ['x', 'remove'],
    ['x', 'takes the part out, after a question'],
    (here) => letters(here) && here.at === 'parts',
  ),
  binding(
    'why',
    ['w'],
    ['w', 'why'],
    ['w', 'why this is asked, and what reads it'],
    (here) => asked(here) && !here.typing,
  ),
  binding('why', ['ctrl-y'], ['^Y', 'why'], ['Ctrl-Y', 'why this is asked, and what reads it'], asked),
  binding('jump', ['g'], ['g', 'jump'], ['g', 'to any question'], lettersBut('resume')),
  binding(
    'jump',
    ['/', 'ctrl-g'],
    ['/', 'jump'],
    ['/ or Ctrl-G', 'to any question'],
    (here) => idle(here) && working(here),
  ),
  binding(
    'find',
    ['f'],
    ['f', 'find'],
    ['f', 'finds a row of a long list'],
    (here) => letters(here) && here.rows > LONG_LIST,
  ),
  binding('review', ['r'], ['r', 'review'], ['r', 'every answer, to be changed'], lettersBut('review')),
  binding(
    'review',
    ['ctrl-r'],
    ['^R', 'review'],
    ['Ctrl-R', 'every answer, to be changed'],
    (here) => free(here) && working(here),
  ),
  binding('result', ['t'], ['t', 'result'], ['t', 'the result as things stand'], lettersBut('result')),
  binding(
    'result',
    ['ctrl-t'],
    ['^T', 'result'],
    ['Ctrl-T', 'the result as things stand'],
    (here) => free(here) && working(here) && here.at !== 'result',
  ),
  binding(
    'undo',
    ['u'],
    ['u', 'undo'],
    ['u', 'takes back the last change of an answer'],
    lettersBut('resume'),
  ),
  binding(
    'undo',
    ['ctrl-u'],
    ['^U', 'undo'],
    ['Ctrl-U', 'takes back the last change; where something is typed, clears it'],
    (here) => idle(here) && working(here),
  ),
  binding('parts', ['p'], null, ['p', 'the list of parts'], lettersBut('parts')),
  binding('parts', ['ctrl-p'], null, ['Ctrl-P', 'the list of parts'], (here) => free(here) && working(here)),
  binding(
    'quit',
    ['q'],
    ['q', 'leave'],
    ['q', 'leaves; everything answered is kept'],
    (here) => letters(here) || here.over === 'start',
  ),
  binding('help', ['?'], ['?', 'help'], ['?', 'this'], (here) => idle(here) || here.over === 'start'),
  binding('suspend', ['ctrl-z'], null, ['Ctrl-Z', 'stops the program for a while; fg goes on'], () => true),
  binding('repaint', ['ctrl-l'], null, ['Ctrl-L', 'paints the screen anew'], () => true),
];

const nameOf = (key: Key): string | null =>
  key.kind === 'named' ? key.name : key.kind === 'text' ? key.text : null;

/** What a key does here; null where it does nothing but be typed. */
export function actionOf(key: Key, here: Situation): Action | null {
  const name = nameOf(key);
  return (
    KEYMAP.find(({ keys, where }) => name !== null && keys.includes(name) && where(here))?.action ?? null
  );
}

/** The keys that do something here, each action once. */
const boundHere = (here: Situation): readonly Binding[] =>
  KEYMAP.filter(({ where }) => where(here)).filter(
    ({ action, keys }, index, all) =>
      all.findIndex(
        (other) =>
          other.action === action &&
          (here.typing || other.keys.every((key) => keys.includes(key)) || other.shown !== null),
      ) === index,
  );

/** What the last line names: keys and what they do, the most needed first, help always. */
export const shownKeys = (here: Situation): readonly (readonly [key: string, does: string])[] =>
  boundHere(here).flatMap(({ shown }) => (shown === null ? [] : [shown]));

/** Every key that does something here, and what it does. */
export const helpHere = (here: Situation): readonly (readonly [keys: string, does: string])[] => [
  ...KEYMAP.filter(({ where }) => where(here)).map(({ help }) => help),
  ['Ctrl-C', 'twice: leaves; everything answered is kept'],
];
