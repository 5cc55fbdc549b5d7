import { type ArrangementRow, arrangementRows } from '../../report/arrangement-rows.ts';
import type { Decision } from '../../rules/decision.ts';
import { allQuestions } from '../../session/all-questions.ts';
import type { QuestionScreen, Screen } from '../../session/screen.ts';
import { screenOf } from '../../session/screen.ts';
import type { Event, Session } from '../../session/session.ts';
import type { World } from '../../session/world.ts';
import { explainItems } from './explain-items.ts';
import { matching } from './list-moves.ts';
import { ready } from './not-yet.ts';
import { PAPER_LIST, PAPERS } from './paper-list.ts';
import { notAskedWords, REVIEW_STATES, reviewWords } from './review-words.ts';
import { tryItems } from './try-items.ts';
import { type Over, RESULT_VIEWS, type ResultView, type Ui } from './ui.ts';
import { VIEW_WORDS } from './view-words.ts';

/** What Enter does on a row. */
type Act =
  | { readonly do: 'event'; readonly event: Event }
  /** takes what is chosen of several options; this row where nothing is */
  | { readonly do: 'choose'; readonly option: number }
  | { readonly do: 'look'; readonly id: string }
  | { readonly do: 'over'; readonly over: Over | null }
  | { readonly do: 'view'; readonly view: ResultView }
  | { readonly do: 'say'; readonly words: string };

/** A row of a list: what stands there, and what it does. */
export interface Item {
  readonly key: string;
  readonly label: string;
  /** a few words more on it, shown where it is highlighted */
  readonly about: string;
  /** stands at the right: how it stands */
  readonly state: string;
  readonly act: Act;
}

const item = (key: string, label: string, act: Act, about = '', state = ''): Item => ({
  key,
  label,
  about,
  state,
  act,
});
const event = (given: Event): Act => ({ do: 'event', event: given });
const replying = (text: string): Act => event({ type: 'reply', text });

/** Lists as they were worked out last, by what they are made of: they are asked for several times between two keys. */
const known = {
  jump: new WeakMap<Session, { readonly world: World; readonly items: readonly Item[] }>(),
  screen: new WeakMap<
    Screen,
    { readonly chosen: readonly number[]; readonly items: readonly Item[] | null }
  >(),
  arrangements: new WeakMap<Decision, readonly ArrangementRow[]>(),
};

/** The list that is shown now, filtered by what is typed over it; null where the screen has none. */
export function itemsOf(ui: Ui, world: World): readonly Item[] | null {
  const { over, session, field } = ui;
  if (over?.kind === 'start') return startItems(session);
  if (over?.kind === 'jump') return matching(jumpItems(session, world), field.text);
  if (over?.kind === 'explain') return matching(explainItems(ui, world), field.text);
  if (over?.kind === 'try') return matching(tryItems(jumpItems(session, world)), field.text);
  if (over !== null && over.kind !== 'find' && over.kind !== 'leave') return null;
  const items =
    session.at.at === 'result' ? resultItems(ui, world) : screenList(screenOf(session, world), ui.chosen);
  return over?.kind === 'find' && items !== null ? matching(items, field.text) : items;
}

function startItems({ at }: Session): readonly Item[] {
  const saved = at.at === 'resume';
  return [
    ...(saved ? [item('resume', 'Go on with the saved interview', replying('resume'))] : []),
    item(
      'new',
      'Begin a new interview',
      saved ? replying('new') : { do: 'over', over: null },
      saved ? 'Your first answer then takes the place of the saved ones.' : '',
    ),
    item('open', 'Go on from an answers file', { do: 'over', over: { kind: 'open', error: null } }),
  ];
}

function jumpItems(session: Session, world: World): readonly Item[] {
  const found = known.jump.get(session);
  if (found?.world === world) return found.items;
  const items = questionLines(session, world);
  known.jump.set(session, { world, items });
  return items;
}

const questionLines = (session: Session, world: World): readonly Item[] =>
  allQuestions(session, world).map(({ place, part, title, state }, index) =>
    item(
      String(index),
      part === null ? title : `${part}: ${title}`,
      state === 'does not apply'
        ? { do: 'say', words: 'That question does not apply now; other answers decide whether it does.' }
        : event({ type: 'go', to: place }),
      '',
      state,
    ),
  );

function screenList(screen: Screen, chosen: readonly number[]): readonly Item[] | null {
  const found = known.screen.get(screen);
  if (found?.chosen === chosen) return found.items;
  const items = screenItems(screen, chosen);
  known.screen.set(screen, { chosen, items });
  return items;
}

function screenItems(screen: Screen, chosen: readonly number[]): readonly Item[] | null {
  switch (screen.kind) {
    case 'question':
      return questionItems(screen, chosen);
    case 'parts':
      return [
        ...screen.parts.map(({ name, summary, open }, index) =>
          item(
            `part ${index}`,
            summary === '' ? name : `${name}: ${summary}`,
            event({ type: 'edit-part', part: index }),
            '',
            open === 0 ? 'complete' : `${open} open`,
          ),
        ),
        item('add', 'Add another part', event({ type: 'add-part' })),
        item('go on', 'Go on: all parts are in', event({ type: 'accept' })),
      ];
    case 'review':
      return [
        item(
          'go on',
          screen.part === null ? 'To the result' : 'Done with this part',
          event({ type: 'accept' }),
        ),
        ...screen.lines.map((line, index) =>
          item(
            `${index} ${line.number}`,
            `${line.part === null ? '' : `${line.part}: `}${line.title}: ${reviewWords(line)}`,
            line.number === null
              ? { do: 'say', words: 'This answer is kept, but it does not apply now.' }
              : event({ type: 'find', text: String(line.number) }),
            line.objection ?? notAskedWords(line, screen.settled),
            REVIEW_STATES[line.state],
          ),
        ),
      ];
    case 'remove':
      return [
        item('no', 'No, keep it', replying('no')),
        item('yes', `Yes, remove ${screen.name} and its ${screen.answered} answers`, replying('yes')),
      ];
    case 'overwrite':
      return [
        item('no', 'No, type another name', replying('no')),
        item('yes', `Yes, replace ${screen.file}`, replying('yes')),
      ];
    default:
      return null;
  }
}

function questionItems(
  { input, notSure }: QuestionScreen,
  chosen: readonly number[],
): readonly Item[] | null {
  const unsure = item('not sure', 'Not sure', event({ type: 'not-sure' }), `${notSure}.`);
  switch (input.kind) {
    case 'choice':
      return [
        ...input.options.map(({ value, label, about }, index) =>
          item(value, label, replying(String(index + 1)), about),
        ),
        unsure,
      ];
    case 'yes-no':
      return [item('yes', 'Yes', replying('yes')), item('no', 'No', replying('no')), unsure];
    case 'list':
    case 'order': {
      const options = input.options.map(({ value, label, about }, option) =>
        item(value, label, { do: 'choose', option }, about),
      );
      // what stands in an order is shown in it
      const inOrder = chosen.flatMap((option) => options[option] ?? []);
      return [...(input.kind === 'order' && inOrder.length > 0 ? inOrder : options), unsure];
    }
    default:
      return null;
  }
}

function resultItems({ view, session, looked, compared }: Ui, world: World): readonly Item[] | null {
  if (view === 'papers') {
    return PAPER_LIST.map((what) => item(what, PAPERS[what], event({ type: 'write', what, file: null })));
  }
  if (view === 'views') {
    return RESULT_VIEWS.filter((each) => each !== 'views').map((each) => {
      const { title, about, key } = VIEW_WORDS[each];
      return item(each, `${key}  ${title}`, { do: 'view', view: each }, about);
    });
  }
  const lists = view === 'why-not' ? looked === null : view === 'compare' && looked !== null;
  if (!lists) return null;
  const decision = ready(() => world.everyArrangement(session.kept));
  if (decision === undefined || decision === null) return [];
  const rows = known.arrangements.get(decision) ?? arrangementRows(decision, false);
  known.arrangements.set(decision, rows);
  const shown = view === 'compare' ? passingFirst(rows) : rows.filter(({ passes }) => passes !== 'yes');
  return shown.map(({ id, name, fate }) =>
    item(id, name, { do: 'look', id }, '', compared.includes(id) ? `compared; ${fate}` : fate),
  );
}

const ORDER = ['yes', 'open', 'no'];
const passingFirst = (rows: readonly ArrangementRow[]): readonly ArrangementRow[] =>
  ORDER.flatMap((wanted) => rows.filter(({ passes }) => passes === wanted));
