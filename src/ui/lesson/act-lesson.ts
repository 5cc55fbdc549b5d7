import { findTopics, qualified } from '../../teaching/find-topic.ts';
import { type ClassEvent, runClass } from '../../teaching/lessons/class-run.ts';
import { type LessonEvent, type LessonRun, runLesson } from '../../teaching/lessons/run-lesson.ts';
import { topicOfStep } from '../../teaching/lessons/step-topic.ts';
import type { Key } from '../keys/key.ts';
import { movedBy, PAGE } from '../state/list-moves.ts';
import { changesHere, lessonHere, lessonList, shownStep } from './lesson-here.ts';
import type { LessonAction } from './lesson-keys.ts';
import {
  type Alone,
  type LessonOver,
  type LessonTurn,
  type LessonUi,
  type OpenedLesson,
  turned,
} from './lesson-ui.ts';

/** Does what a key asks for. */
export function actedInLesson(ui: LessonUi, action: LessonAction, key: Key): LessonTurn {
  switch (action) {
    case 'up':
      return [moved(ui, -1), []];
    case 'down':
      return [moved(ui, 1), []];
    case 'page-up':
      return [moved(ui, -PAGE), []];
    case 'page-down':
      return [moved(ui, PAGE), []];
    case 'row': {
      const rows = lessonList(ui)?.length ?? 0;
      const digit = key.kind === 'text' ? Number(key.text) : 1;
      return [{ ...ui, mark: Math.max(0, Math.min(digit, rows) - 1) }, []];
    }
    case 'take':
      return taken(ui);
    case 'clear':
      return [turned(ui, {}), []];
    case 'close':
      return [closed(ui), []];
    case 'back':
      return ui.opened?.goes.how === 'class' ? inClass(ui, { type: 'back' }) : earlier(ui);
    case 'forward':
      return [later(ui), []];
    case 'hint':
    case 'reveal':
      return inRun(ui, { type: action });
    case 'next':
    case 'next step':
    case 'step before':
    case 'first':
    case 'last':
      return inClass(ui, { type: action });
    case 'drop':
      return inClass({ ...ui, over: null }, { type: action });
    case 'guess':
      return [turned(ui, { over: { kind: 'guess' } }), []];
    case 'what-if':
      return [tries(ui), []];
    case 'explain':
      return [explained(ui), []];
    case 'help':
      return [{ ...ui, over: { kind: 'help' }, scroll: 0 }, []];
    case 'quit':
      return [ui, [{ kind: 'leave', how: 'quit' }]];
    case 'suspend':
    case 'repaint':
      return [ui, [{ kind: action }]];
  }
}

/** Moves the highlight, or scrolls; a page scrolls what is given even over words to choose from. */
function moved(ui: LessonUi, by: number): LessonUi {
  const here = lessonHere(ui);
  const pages = Math.abs(by) > 1 && here.place === 'predict' && ui.over === null;
  return { ...ui, ...movedBy(ui, by, pages ? 0 : here.rows) };
}

/** What is seen again where something is closed; what is typed and highlighted there stays. */
function closed(ui: LessonUi): LessonUi {
  const { over } = ui;
  if (over?.kind === 'help') return { ...ui, over: null, scroll: 0 };
  if (over?.kind === 'explained') return { ...ui, over: over.behind, scroll: 0 };
  return turned(ui, { over: over?.kind === 'change' ? { kind: 'changes' } : null });
}

function taken(ui: LessonUi): LessonTurn {
  const { over, field } = ui;
  const marked = lessonList(ui)?.[ui.mark]?.value;
  if (over?.kind === 'explain')
    return [marked === undefined ? ui : opensTopic(ui, marked, { kind: 'explain' }), []];
  if (over?.kind === 'changes') {
    const of = marked === undefined ? undefined : changesHere(ui)[Number(marked)];
    return [of === undefined ? ui : turned(ui, { over: { kind: 'change', of } }), []];
  }
  if (over?.kind === 'change')
    return [{ ...ui, said: WORKING, work: { kind: 'try', of: over.of, typed: field.text } }, []];
  if (over?.kind === 'guess')
    return inClass({ ...ui, over: null }, { type: 'guess', text: field.text, units: ui.units }, true);
  switch (lessonHere(ui).place) {
    case 'list':
      return [marked === undefined ? ui : { ...ui, said: WORKING, work: { kind: 'open', name: marked } }, []];
    case 'predict':
      return predicted(ui, marked ?? field.text);
    case 'revealed':
      return inRun(ui, { type: 'next' });
    case 'end':
      return [
        marked === undefined || marked === '' ? { ...ui, said: NO_TOPIC } : opensTopic(ui, marked, null),
        [],
      ];
    default:
      return [ui, []];
  }
}

const WORKING = 'This is being worked out …';
const NO_TOPIC = 'There is no explanation of its own for this step.';

const opensTopic = (ui: LessonUi, topic: string, from: LessonOver | null): LessonUi => ({
  ...ui,
  over: { kind: 'explained', topic, behind: from },
  scroll: 0,
  said: null,
});

/** A prediction; the words that the line mode knows work here too. */
function predicted(ui: LessonUi, text: string): LessonTurn {
  const word = text.trim().toLowerCase();
  if (word === 'hint' || word === 'reveal') return inRun(ui, { type: word });
  if (word === 'quit' || word === 'exit') return [ui, [{ kind: 'leave', how: 'quit' }]];
  const [, name] = /^explain\b\s*(.*)$/.exec(word) ?? [];
  if (name !== undefined) {
    const [topic] = findTopics(name).found;
    return [
      topic === undefined
        ? turned(ui, { over: { kind: 'explain' } })
        : opensTopic(turned(ui, {}), qualified(topic), null),
      [],
    ];
  }
  return inRun(ui, { type: 'predict', text, units: ui.units });
}

/** An event of whoever learns alone: kept at once. */
function inRun(ui: LessonUi, event: LessonEvent): LessonTurn {
  const { opened } = ui;
  if (opened?.goes.how !== 'alone') return [ui, []];
  const { goes, ready, name } = opened;
  const run = runLesson(ready, goes.run, event);
  const wrong = run.feedback?.kind === 'wrong' ? [...goes.wrong, run.feedback] : goes.wrong;
  const next: Alone = { ...goes, run, wrong: run.index === goes.run.index ? wrong : [] };
  const isSame = run.index === goes.run.index && run.phase === goes.run.phase;
  // what was not understood stays, to be mended
  const stays = run.feedback?.kind === 'unreadable';
  const shown = isSame ? { ...ui, field: stays ? ui.field : turned(ui, {}).field } : turned(ui, {});
  return [{ ...shown, opened: { ...opened, goes: next } }, keeps(name, run)];
}

const keeps = (name: string, run: LessonRun): LessonTurn[1] => [{ kind: 'keep', name, run }];

const looking = (ui: LessonUi, opened: OpenedLesson, goes: Alone, looked: number | null): LessonUi =>
  turned(ui, { opened: { ...opened, goes: { ...goes, looked } } });

function earlier(ui: LessonUi): LessonTurn {
  const { opened, list } = ui;
  if (opened?.goes.how !== 'alone') return [ui, []];
  const { goes } = opened;
  const index = (goes.looked ?? goes.run.index) - 1;
  if (index >= 0) return [looking(ui, opened, goes, index), []];
  if (list === null) return [{ ...ui, said: 'This is the first step.' }, []];
  return [turned(ui, { opened: null }), [{ kind: 'list' }]];
}

function later(ui: LessonUi): LessonUi {
  const { opened } = ui;
  if (opened?.goes.how !== 'alone' || opened.goes.looked === null) return ui;
  const { goes } = opened;
  const index = opened.goes.looked + 1;
  return looking(ui, opened, goes, index >= goes.run.index ? null : index);
}

/** An event of a class, kept at once. `asks`: what was refused stays typed, to be mended. */
export function inClass(ui: LessonUi, event: ClassEvent, asks = false): LessonTurn {
  const { opened } = ui;
  if (opened?.goes.how !== 'class') return [ui, []];
  const run = runClass(opened.ready, opened.goes.run, event);
  const now: OpenedLesson = { ...opened, goes: { how: 'class', run } };
  if (run.refused !== null && asks)
    return [{ ...ui, opened: now, over: { kind: 'guess' }, said: run.refused }, []];
  return [turned(ui, { opened: now, said: run.refused }), [{ kind: 'keep class', name: opened.name, run }]];
}

function tries(ui: LessonUi): LessonUi {
  if (changesHere(ui).length === 0)
    return { ...ui, said: 'No number is given here that could be another one.' };
  return turned(ui, { over: { kind: 'changes' } });
}

/** What the step is about; where nothing explains it, the list of all that can be explained. */
function explained(ui: LessonUi): LessonUi {
  const shown = shownStep(ui);
  const topic = shown === null ? null : topicOfStep(shown.step);
  if (topic !== null) return opensTopic(ui, topic, null);
  // the list is filtered by typing: what is typed here would be lost
  return ui.field.text === '' ? turned(ui, { over: { kind: 'explain' } }) : { ...ui, said: NO_TOPIC };
}
