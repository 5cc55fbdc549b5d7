import {
  asked,
  type Binding,
  binding,
  DIGITS,
  deciding,
  free,
  freely,
  idle,
  listed,
  listing,
  moving,
  ordering,
  overlaid,
  reading,
  working,
} from './binding.ts';

/** Places that are read, where there is nothing for Enter to take. */
const READ: ReadonlySet<string> = new Set(['result', 'trial', 'variants']);

/** Keys that move, choose, take and go back; where two fit, the first takes the key. */
export const MOVING_KEYS: readonly Binding[] = [
  binding('up', ['up'], null, 'one row up', moving),
  binding('down', ['down'], 'choose', 'one row down', listed),
  binding('down', ['down'], 'scroll', 'one row down', reading),
  binding('page-up', ['page-up'], null, 'ten rows up', moving),
  binding('page-down', ['page-down'], null, 'ten rows down', listed),
  binding('page-down', ['page-down', ' '], null, 'ten rows down', reading),
  binding('first', ['home'], null, 'to the first row', (here) => moving(here) && !here.typed),
  binding('last', ['end'], null, 'to the last row', (here) => moving(here) && !here.typed),
  binding(
    'place',
    DIGITS,
    'its place',
    'gives the highlighted row this place, 1 the most important',
    ordering,
  ),
  binding('raise', [' '], 'up', 'moves the highlighted row up by one', ordering),
  binding('yes', ['y'], null, 'highlights Yes; Enter takes it', deciding),
  binding('no', ['n'], null, 'highlights No; Enter takes it', deciding),
  binding('row', DIGITS, null, 'to this row', (here) => listed(here) && !here.typing),
  binding('toggle', [' '], 'mark', 'marks the row, or takes the mark away', (here) => {
    return asked(here) && here.input === 'list';
  }),
  binding('take', ['enter'], 'go there', 'goes to the question that is highlighted', (here) => {
    return listed(here) && here.over === 'jump';
  }),
  binding(
    'take',
    ['enter'],
    'try it',
    'asks the question that is highlighted, to try another answer',
    (here) => {
      return listed(here) && here.over === 'try';
    },
  ),
  binding('take', ['enter'], 'explain', 'explains what is highlighted', (here) => {
    return listed(here) && here.over === 'explain';
  }),
  binding('take', ['enter'], 'look', 'shows what fails, and by how much', listing('why-not', false)),
  binding('take', ['enter'], 'compare', 'into the comparison, or out of it', listing('compare', true)),
  binding('take', ['enter'], 'write', 'asks where to write it', listing('papers', false)),
  binding('take', ['enter'], 'open', 'opens the view that is highlighted', listing('views', false)),
  binding('take', ['enter'], 'take', 'takes what is highlighted, typed or shown', (here) => {
    if (here.over === 'find') return listed(here);
    return here.over === 'start' || here.over === 'open' || (free(here) && !READ.has(here.at));
  }),
  binding('close', ['escape', 'enter', 'q', '?', 'left', 'shift-tab'], 'close', 'closes this', overlaid),
  binding('close', ['escape', 'shift-tab'], 'close', 'closes this', ({ over }) => {
    return over === 'jump' || over === 'try' || over === 'find' || over === 'open' || over === 'explain';
  }),
  binding('clear', ['escape'], 'clear', 'takes away what is typed', (here) => free(here) && here.typed),
  binding(
    'back',
    ['left', 'escape', 'shift-tab'],
    'back',
    'to where you were before; nothing is lost',
    (here) => {
      return idle(here) && working(here);
    },
  ),
  binding('back', ['shift-tab'], null, 'to where you were before; nothing is lost', freely),
];
