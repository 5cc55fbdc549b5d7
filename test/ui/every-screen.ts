import { QUESTIONS } from '../../src/questions/index.ts';
import type { Place, Session } from '../../src/session/session.ts';
import { walkOf } from '../../src/session/walk.ts';
import type { World } from '../../src/session/world.ts';
import { happened } from '../../src/ui/state/happened.ts';
import { placed } from '../../src/ui/state/placed.ts';
import { type Over, RESULT_VIEWS, type Ui } from '../../src/ui/state/ui.ts';

/** A screen by a name. */
export type Named = readonly [name: string, ui: Ui];

/** Gone to a place, with the highlight where it belongs there. */
export const goneTo = (ui: Ui, place: Place, world: World): Ui =>
  happened(ui, { type: 'go', to: place }, world)[0];

/** The same session set to a place that no key leads to at once. */
const setTo = (ui: Ui, at: Place, world: World): Ui =>
  placed({ ...ui, session: { ...ui.session, at } }, ui, world);

const over = (ui: Ui, to: Over, world: World): Ui => placed({ ...ui, over: to }, ui, world);

/** The session as it is right after an answer: what that did is told under the next question. */
const justAnswered = (session: Session): Session => ({
  ...session,
  note: {
    kind: 'accepted',
    id: 'material',
    subject: 0,
    given: { from: 'typed', value: 'stainless-austenitic' },
    before: session.kept,
  },
});

/** Each question once, where it applies first: as it is come to right after another was answered. */
export function everyQuestion(ui: Ui, world: World): readonly Named[] {
  const walk = walkOf(ui.session.kept, world);
  return QUESTIONS.flatMap(({ id }): readonly Named[] => {
    const place = walk.find((each) => each.at === 'question' && each.id === id);
    if (place === undefined) return [];
    const there = goneTo(ui, place, world);
    return [[id, { ...there, session: justAnswered(there.session) }]];
  });
}

export const typed = (ui: Ui, text: string): Ui => ({ ...ui, field: { text, caret: text.length } });

const LONG_NAME = 'Half the budget, at most';

/** Another budget is tried, from the result. */
function triedFrom(ui: Ui, world: World): Ui {
  const result = goneTo(ui, { at: 'result' }, world);
  const [asked] = happened(
    result,
    { type: 'try', to: { at: 'question', id: 'budget', subject: null } },
    world,
  );
  return happened(asked, { type: 'reply', text: '90000' }, world)[0];
}

/** What is no question: places, and what lies over them. */
export function everyPlace(ui: Ui, world: World): readonly Named[] {
  const diameter = goneTo(ui, { at: 'question', id: 'diameter', subject: 0 }, world);
  const review = setTo(ui, { at: 'review', part: null }, world);
  const tried = triedFrom(ui, world);
  const named = happened(tried, { type: 'name', name: LONG_NAME }, world)[0];
  const file = 'a-report-with-a-rather-long-name-that-nobody-would-type-by-hand-but-somebody-does.md';
  return [
    ['start', over(ui, { kind: 'start' }, world)],
    ['start with a saved interview', over(setTo(ui, { at: 'resume' }, world), { kind: 'start' }, world)],
    ['resume', setTo(ui, { at: 'resume' }, world)],
    [
      'open',
      typed(over(ui, { kind: 'open', error: 'shop.yaml: there is no such file' }, world), 'shop.yaml'),
    ],
    ['jump', over(diameter, { kind: 'jump' }, world)],
    ['jump, filtered', typed(over(diameter, { kind: 'jump' }, world), 'toler')],
    ['jump, nothing found', typed(over(diameter, { kind: 'jump' }, world), 'xyzzy')],
    ['review', { ...review, session: justAnswered(review.session) }],
    ['review at its end', { ...review, mark: 200 }],
    ['review of a part', setTo(ui, { at: 'review', part: 2 }, world)],
    ['find in the review', typed(over(review, { kind: 'find' }, world), 'hinge')],
    ['parts', setTo(ui, { at: 'parts' }, world)],
    ['remove', setTo(ui, { at: 'remove', part: 1 }, world)],
    ['file', typed(setTo(ui, { at: 'file', what: 'report' }, world), file)],
    ['overwrite', setTo(ui, { at: 'overwrite', what: 'report', file }, world)],
    ['why', over(diameter, { kind: 'why' }, world)],
    ['help', over(diameter, { kind: 'help' }, world)],
    ['help at the result', over(setTo(ui, { at: 'result' }, world), { kind: 'help' }, world)],
    [
      'the words of a question to explain',
      over(over(diameter, { kind: 'why' }, world), { kind: 'explain' }, world),
    ],
    ['nothing to explain', typed(over(diameter, { kind: 'explain' }, world), 'xyzzy')],
    ['half a size', typed(diameter, 'about so')],
    ['a long text', typed(diameter, '123456789 '.repeat(40))],
    ['what is tried', tried],
    ['what is tried, scrolled', { ...tried, scroll: 100 }],
    ['another answer to try', over(goneTo(ui, { at: 'result' }, world), { kind: 'try' }, world)],
    ['a question of what is tried', goneTo(tried, { at: 'question', id: 'diameter', subject: 0 }, world)],
    ['a name for it', typed(happened(tried, { type: 'name', name: null }, world)[0], 'Cheap')],
    ['a name that is none', happened(tried, { type: 'name', name: '7' }, world)[0]],
    ['variants', named],
    ['a variant', happened(named, { type: 'look', variant: '1' }, world)[0]],
    ['leaving', over(diameter, { kind: 'leave', under: null }, world)],
    ['told', { ...review, said: 'That question does not apply now; other answers decide whether it does.' }],
  ];
}

/** The result in every view, and what is looked at inside. */
export function everyView(ui: Ui, world: World): readonly Named[] {
  const at = goneTo(ui, { at: 'result' }, world);
  const tried = triedFrom(ui, world);
  const [miss = ''] =
    world
      .everyArrangement(ui.session.kept)
      ?.arrangements.filter(({ passes }) => passes === 'no')
      .map(({ id }) => id) ?? [];
  return [
    ...RESULT_VIEWS.map((view): Named => [view, { ...at, view }]),
    ['what is tried of it', tried],
    ['the result of what is tried', goneTo(tried, { at: 'result' }, world)],
    ['its variants', happened(tried, { type: 'name', name: LONG_NAME }, world)[0]],
    ['the checks to explain', over({ ...at, view: 'why' }, { kind: 'explain' }, world)],
    ['what to explain, filtered', typed(over(at, { kind: 'explain' }, world), 'reach')],
    [
      'a check explained',
      over({ ...at, view: 'why' }, { kind: 'explained', topic: 'check/reach-high' }, world),
    ],
    [
      'an assumption explained, scrolled',
      { ...over(at, { kind: 'explained', topic: 'assumption/brakeSafety' }, world), scroll: 10_000 },
    ],
    ['overview, scrolled', { ...at, scroll: 25 }],
    ['why, scrolled to its end', { ...at, view: 'why', scroll: 10_000 }],
    ['why not this one', { ...at, view: 'why-not', looked: miss }],
    ['why not, at the end of the list', { ...at, view: 'why-not', mark: 300 }],
    ['what to compare', { ...at, view: 'compare', looked: 'others', compared: [miss] }],
  ];
}
