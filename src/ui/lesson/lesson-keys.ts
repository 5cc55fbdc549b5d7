import { DIGITS } from '../keys/binding.ts';
import { type BindingOf, keymapOf } from '../keys/keymap-of.ts';
import type { LessonOver } from './lesson-ui.ts';

/** What a key does in a lesson. */
export type LessonAction =
  | 'up'
  | 'down'
  | 'page-up'
  | 'page-down'
  | 'first'
  | 'last'
  /** the digit says which */
  | 'row'
  | 'take'
  | 'clear'
  | 'close'
  | 'back'
  | 'forward'
  | 'hint'
  | 'reveal'
  | 'next'
  | 'next step'
  | 'step before'
  | 'guess'
  | 'what-if'
  | 'drop'
  | 'explain'
  | 'help'
  | 'quit'
  | 'suspend'
  | 'repaint';

/** Where a key is pressed, as far as keys care. */
export interface LessonHere {
  readonly place: 'list' | 'predict' | 'revealed' | 'earlier' | 'end' | 'class';
  readonly over: LessonOver['kind'] | null;
  /** letters are text here */
  readonly typing: boolean;
  /** something is typed already */
  readonly typed: boolean;
  /** rows of the list; 0: none */
  readonly rows: number;
  /** given numbers are tried otherwise */
  readonly tries: boolean;
}

type Where = (here: LessonHere) => boolean;

const free: Where = ({ over }) => over === null;
const letters: Where = (here) => free(here) && !here.typing;
const at =
  (...places: readonly LessonHere['place'][]): Where =>
  (here) =>
    free(here) && places.includes(here.place);
const alone: Where = (here) => free(here) && here.place !== 'class';
const idle: Where = (here) => alone(here) && !here.typed;
const predicting: Where = at('predict');
const choosing: Where = (here) => predicting(here) && !here.typing;
const overlaid: Where = ({ over }) => over === 'help' || over === 'explained';
const overList: Where = ({ over }) => over === 'explain' || over === 'changes';
const overField: Where = ({ over }) => over === 'guess' || over === 'change';
const listed: Where = ({ rows }) => rows > 0;
const showsTried: Where = ({ over }) => over === 'tried';
const scrolling: Where = (here) => !listed(here) && (overlaid(here) || showsTried(here) || free(here));

const key = (
  action: LessonAction,
  keys: readonly string[],
  shown: string | null,
  help: string,
  where: Where,
): BindingOf<LessonAction, LessonHere> => ({ action, keys, shown, help, where });

/** Keys of a lesson that a trainer shows: one goes on, one goes back. */
const CLASS_KEYS = [
  key('next', [' ', 'right', 'enter', 'page-down'], 'goes on', 'shows the next thing', at('class')),
  key(
    'back',
    ['left', 'backspace', 'page-up', 'shift-tab'],
    'goes back',
    'takes the last thing away',
    at('class'),
  ),
  key('guess', ['g'], 'guess', 'types what the room says; nobody has to', at('class')),
  key(
    'close',
    [' ', 'right', 'enter', 'left', 'escape', 'q'],
    'goes on',
    'back to the lesson, with what is tried',
    showsTried,
  ),
  key('what-if', ['i'], 'what if', 'tries a given number otherwise', at('class')),
  key('what-if', ['i'], 'another', 'tries another given number besides', showsTried),
  key(
    'drop',
    ['d'],
    'drop',
    'every number as it was before',
    (here) => here.tries && (at('class')(here) || showsTried(here)),
  ),
  key('next step', ['n'], null, 'to the next step', at('class')),
  key('step before', ['p'], null, 'to the step before', at('class')),
  key('first', ['home'], null, 'to the question of this step', at('class')),
  key('last', ['end'], null, 'to the end of this step', at('class')),
];

const BACK_HELP = 'to the step before, to read it again; nothing is lost';

/** Every key, in the order in which the last line shows them. */
const BINDINGS: readonly BindingOf<LessonAction, LessonHere>[] = [
  ...CLASS_KEYS,
  key('take', ['enter'], 'predict', 'takes what is typed or highlighted as your prediction', predicting),
  key('take', ['enter'], 'go on', 'to the next step', at('revealed')),
  key('forward', ['enter', 'right'], 'forward', 'to the step after it', at('earlier')),
  key('take', ['enter'], 'open', 'begins the lesson that is highlighted, or goes on with it', at('list')),
  key('take', ['enter'], 'explain', 'explains what the step is about that is highlighted', at('end')),
  key('take', ['enter'], 'explain', 'explains what is highlighted', ({ over }) => over === 'explain'),
  key(
    'take',
    ['enter'],
    'change',
    'changes the number that is highlighted',
    ({ over }) => over === 'changes',
  ),
  key('take', ['enter'], 'take', 'takes what is typed', overField),
  key('up', ['up'], null, 'one row up', (here) => listed(here) || scrolling(here)),
  key('down', ['down'], 'choose', 'one row down', listed),
  key('down', ['down'], 'scroll', 'one row down', scrolling),
  key('page-up', ['page-up'], null, 'ten rows up', (here) => listed(here) || scrolling(here)),
  key('page-down', ['page-down'], null, 'ten rows down', (here) => listed(here) || scrolling(here)),
  key('page-down', [' '], null, 'ten rows down', (here) => {
    return (listed(here) || scrolling(here)) && !here.typing;
  }),
  key('row', DIGITS, null, 'to this row', (here) => listed(here) && !here.typing),
  key('hint', ['h', 'ctrl-n'], 'hint', 'the next hint; it costs points', choosing),
  key('hint', ['ctrl-n'], 'hint', 'the next hint; it costs points', predicting),
  key('reveal', ['r', 'ctrl-r'], 'reveal', 'shows the way, for no points', choosing),
  key('reveal', ['ctrl-r'], 'reveal', 'shows the way, for no points', predicting),
  key('close', ['escape', 'enter', 'q', '?', 'left', 'shift-tab'], 'close', 'closes this', overlaid),
  key('clear', ['escape'], 'clear', 'takes away what is typed', (here) => here.typed),
  key('close', ['escape', 'shift-tab'], 'close', 'closes this', (here) => overList(here) || overField(here)),
  key(
    'back',
    ['left', 'escape', 'shift-tab'],
    'back',
    BACK_HELP,
    (here) => idle(here) && here.place !== 'list',
  ),
  key('explain', ['e', 'ctrl-y'], 'explain', 'what this step is about, with an example', (here) => {
    return letters(here) && here.place !== 'list' && here.place !== 'end';
  }),
  key('explain', ['ctrl-y'], 'explain', 'what this step is about, with an example', predicting),
  key('clear', ['ctrl-u'], null, 'takes away what is typed', (here) => here.typed),
  key('quit', ['q'], 'leave', 'leaves', at('class')),
  key('quit', ['q'], 'leave', 'leaves; your points are kept', letters),
  key('help', ['?'], 'help', 'this', (here) => free(here) && !here.typed),
  key('suspend', ['ctrl-z'], null, 'stops the program for a while; fg goes on', () => true),
  key('repaint', ['ctrl-l'], null, 'paints the screen anew', () => true),
];

export const LESSON_KEYS = keymapOf(BINDINGS);
