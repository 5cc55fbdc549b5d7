import { PAPERS } from '../../report/exports/papers.ts';
import { isTextView, type TextView } from '../../report/screen-lines.ts';
import type { Event } from '../../session/session.ts';

/** What a typed line asks for: something to say, something to do, or to leave. */
export type Command =
  | { readonly kind: 'say'; readonly what: 'why' | 'help' }
  | { readonly kind: 'events'; readonly events: readonly Event[] }
  /** prints a view of the result */
  | { readonly kind: 'view'; readonly view: TextView }
  /** says what a name means; an empty one: what can be explained */
  | { readonly kind: 'explain'; readonly name: string }
  /** takes back the last change of an answer */
  | { readonly kind: 'undo' }
  | { readonly kind: 'quit' };

const doing = (...events: readonly Event[]): Command => ({ kind: 'events', events });
const GO_TO_PARTS: Event = { type: 'go', to: { at: 'parts' } };
const fileOf = (rest: string): string | null => (rest === '' ? null : rest);

/** The words that are understood at every prompt; what follows them is handed over. */
const COMMANDS: Readonly<Record<string, (rest: string) => Command | null>> = {
  back: alone(doing({ type: 'back' })),
  why: alone({ kind: 'say', what: 'why' }),
  '?': alone({ kind: 'say', what: 'why' }),
  help: alone({ kind: 'say', what: 'help' }),
  quit: alone({ kind: 'quit' }),
  exit: alone({ kind: 'quit' }),
  undo: alone({ kind: 'undo' }),
  review: alone(doing({ type: 'go', to: { at: 'review', part: null } })),
  result: alone(doing({ type: 'go', to: { at: 'result' } })),
  ask: (rest) => {
    const how = rest.toLowerCase();
    if (how === 'all' || how === 'needed') return doing({ type: 'ask', asks: how });
    return rest === '' ? doing({ type: 'ask', asks: null }) : null;
  },
  what: (rest) => {
    const [, which] = /^if\b\s*(.*)$/is.exec(rest) ?? [];
    return which === undefined ? null : doing({ type: 'try-find', text: which });
  },
  variants: (rest) => {
    const go: Event = { type: 'go', to: { at: 'variants' } };
    return rest === '' ? doing(go) : doing(go, { type: 'reply', text: rest });
  },
  goto: (rest) => doing({ type: 'find', text: rest }),
  save: (rest) => doing({ type: 'write', what: 'answers', file: fileOf(rest) }),
  export: (rest) => doing(exported(rest)),
  explain: (rest) => ({ kind: 'explain', name: rest }),
  show: (rest) => {
    const view = rest === '' ? 'overview' : rest.toLowerCase().replaceAll(' ', '-');
    return isTextView(view) ? { kind: 'view', view } : null;
  },
  parts: (rest) => {
    if (rest === '' || rest === 'list') return doing(GO_TO_PARTS);
    if (isTableFile(rest)) return doing({ type: 'read-table', file: unquoted(rest) });
    return doing(GO_TO_PARTS, { type: 'reply', text: rest });
  },
};

/** `parts list.csv`, but not `parts remove list.csv`. */
const isTableFile = (rest: string): boolean =>
  /\.(csv|tsv|tab|txt)"?$/i.test(rest) && !/^(add|copy|edit|rename|remove)\s/i.test(rest);

const unquoted = (file: string): string => file.replace(/^"(.*)"$/, '$1');

/** `export site-sheet for-the-electrician.md`: a paper by its name; else the report, or the decision as JSON. */
function exported(rest: string): Event {
  const [first = '', ...more] = rest.split(/\s+/);
  const paper = PAPERS.find((each) => each === first.toLowerCase());
  if (first.toLowerCase() === 'variants') {
    return { type: 'write', what: 'variants', file: fileOf(more.join(' ')) };
  }
  if (paper !== undefined) return { type: 'write', what: paper, file: fileOf(more.join(' ')) };
  return { type: 'write', what: /\.json$/i.test(rest) ? 'decision' : 'report', file: fileOf(rest) };
}

function alone(command: Command): (rest: string) => Command | null {
  return (rest) => (rest === '' ? command : null);
}

/**
 * What a line asks for. Everything that is no command is a reply to what was asked; words in quotation marks
 * always are, so that a part can be called "review". Where free text is asked for, only a word by itself is a
 * command, and a table of parts: a part may be called "Save tray". Example: `goto tolerance` → find 'tolerance'.
 */
export function readCommand(line: string, freeText: boolean): Command {
  const text = line.trim();
  if (text === '') return doing({ type: 'accept' });
  const [, word = '', rest = ''] = /^(\S+)\s*(.*)$/s.exec(text) ?? [];
  const key = word.toLowerCase();
  const isTable = key === 'parts' && isTableFile(rest.trim());
  const isCommand = Object.hasOwn(COMMANDS, key) && (rest === '' || !freeText || isTable);
  const command = isCommand ? COMMANDS[key]?.(rest.trim()) : null;
  return command ?? doing({ type: 'reply', text });
}

/** Shown by `help`. */
export const HELP: readonly (readonly [command: string, does: string])[] = [
  ['Enter', 'takes what is shown: the answer so far, the usual one, or the next step'],
  ['not sure', 'leaves the answer open; the result says what that costs'],
  ['back', 'goes to the question before; later answers stay'],
  ['undo', 'takes back the last change of an answer, and says what it is now; undo again the one before'],
  [
    'goto 12',
    'goes to a question by its number, or a word of its title, with its part before it where several have it: goto tolerance, goto hinge tolerance; goto open is the first open one',
  ],
  ['why or ?', 'says why this is asked'],
  [
    'explain',
    'lists what can be explained; explain swing says what that is, with its formula and an example worked out',
  ],
  ['review', 'lists every answer, to be changed by its number'],
  ['parts', 'lists the parts; also: parts add, parts copy 1, parts edit 1, parts rename 1, parts remove 1'],
  [
    'parts list.csv',
    'adds the parts of a table that a spreadsheet wrote; its headings are titles of questions',
  ],
  ['result', 'shows the result as things stand'],
  ['export', 'writes the result as a Markdown file; export result.json writes it with every number, as JSON'],
  [
    'export site-sheet',
    'writes one paper by itself: export half-page, export site-sheet, export quote-sheets; also with a name',
  ],
  [
    'show money',
    'shows more of the result: show kinds, options, shop, money, trade-offs, ranges or stages; show alone is the answer',
  ],
  [
    'what if budget',
    'at the result: tries another answer to that question, and says what it changes; then keep, drop, or name and a name',
  ],
  ['variants', 'what was tried and given a name, beside the answers; export variants writes that'],
  ['save', 'writes the answers as an answers file'],
  [
    'ask all',
    'asks every question, in a fixed order; ask needed asks only what can still change the result; ask is the other way',
  ],
  ['quit', 'leaves; everything answered is kept, and --resume goes on'],
];
