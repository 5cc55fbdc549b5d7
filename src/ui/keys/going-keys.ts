import type { ResultView } from '../state/ui.ts';
import { VIEW_WORDS } from '../state/view-words.ts';
import {
  asked,
  type Binding,
  binding,
  choosing,
  freely,
  freelyBut,
  idle,
  LONG_LIST,
  letters,
  lettersBut,
  onParts,
  result,
  working,
} from './binding.ts';

const viewKey = (view: ResultView, shown: string): Binding =>
  binding(`view-${view}`, [VIEW_WORDS[view].key], shown, VIEW_WORDS[view].about, result);

/** Keys that go somewhere or change something; where two fit, the first takes the key. */
export const GOING_KEYS: readonly Binding[] = [
  binding('explain', ['e'], 'explain', 'what a check, a rule or a word means, with an example', (here) => {
    return result(here) || here.over === 'why';
  }),
  // as many as the last line has room for; the list of views holds them all
  viewKey('overview', 'answer'),
  viewKey('views', 'views'),
  viewKey('why', 'why'),
  viewKey('why-not', 'why not'),
  viewKey('compare', 'compare'),
  viewKey('money', 'money'),
  viewKey('papers', 'papers'),
  viewKey('kinds', 'kinds'),
  viewKey('options', 'options'),
  viewKey('shop', 'shop'),
  viewKey('trade-offs', 'given up'),
  viewKey('ranges', 'how far'),
  viewKey('stages', 'stages'),
  binding('pick', ['a'], 'others', 'chooses what is compared', (here) => {
    return result(here) && here.view === 'compare' && !here.looking;
  }),
  binding('not-sure', ['n', 'ctrl-n'], 'not sure', 'leaves the question open', choosing),
  binding('not-sure', ['ctrl-n'], 'not sure', 'leaves the question open', asked),
  binding('add', ['a'], 'add', 'adds a part', onParts),
  binding('copy', ['c'], 'copy', 'copies the part that is highlighted', onParts),
  binding('rename', ['m'], 'rename', 'gives the part another name', onParts),
  binding('remove', ['x'], 'remove', 'takes the part out, after a question', onParts),
  binding('why', ['w', 'ctrl-y'], 'why', 'why this is asked, and what reads it', choosing),
  binding('why', ['ctrl-y'], 'why', 'why this is asked, and what reads it', asked),
  binding('jump', ['g', '/', 'ctrl-g'], 'jump', 'to any question', (here) => letters(here) && working(here)),
  binding('jump', ['/', 'ctrl-g'], 'jump', 'to any question', (here) => idle(here) && working(here)),
  binding('jump', ['ctrl-g'], 'jump', 'to any question', freely),
  binding(
    'find',
    ['f'],
    'find',
    'finds a row of a long list',
    (here) => letters(here) && here.rows > LONG_LIST,
  ),
  binding('review', ['r', 'ctrl-r'], 'review', 'every answer, to be changed', lettersBut('review')),
  binding('review', ['ctrl-r'], 'review', 'every answer, to be changed', freelyBut('review')),
  binding('result', ['t', 'ctrl-t'], 'result', 'the result as things stand', lettersBut('result')),
  binding('result', ['ctrl-t'], 'result', 'the result as things stand', freelyBut('result')),
  binding('undo', ['u', 'ctrl-u'], 'undo', 'takes back the last change of an answer', (here) => {
    return letters(here) && working(here);
  }),
  binding('undo', ['ctrl-u'], 'undo', 'takes back the last change of an answer', (here) => {
    return idle(here) && working(here);
  }),
  binding('clear', ['ctrl-u'], null, 'takes away what is typed', (here) => here.typed),
  binding('parts', ['p', 'ctrl-p'], null, 'the list of parts', lettersBut('parts')),
  binding('parts', ['ctrl-p'], null, 'the list of parts', freelyBut('parts')),
  binding(
    'ask',
    ['e', 'ctrl-o'],
    null,
    'asks every question, or again only what can still change the result',
    lettersBut('result'),
  ),
  binding(
    'ask',
    ['ctrl-o'],
    null,
    'asks every question, or again only what can still change the result',
    freelyBut('result'),
  ),
  binding('quit', ['q'], 'leave', 'leaves; everything answered is kept', (here) => {
    return letters(here) || here.over === 'start';
  }),
  binding('help', ['?'], 'help', 'this', (here) => idle(here) || here.over === 'start'),
  binding('suspend', ['ctrl-z'], null, 'stops the program for a while; fg goes on', () => true),
  binding('repaint', ['ctrl-l'], null, 'paints the screen anew', () => true),
];
