import { formatQuantity } from '../../quantities/format-quantity.ts';
import { qualified } from '../../teaching/find-topic.ts';
import { changeableOf } from '../../teaching/lessons/changeable.ts';
import type { LessonStep } from '../../teaching/lessons/lesson.ts';
import { FULL_POINTS, stepAt } from '../../teaching/lessons/run-lesson.ts';
import type { StepKey } from '../../teaching/lessons/step-key.ts';
import { topicOfStep } from '../../teaching/lessons/step-topic.ts';
import { TOPICS } from '../../teaching/topics/index.ts';
import { matching } from '../state/list-moves.ts';
import type { LessonHere } from './lesson-keys.ts';
import type { LessonUi } from './lesson-ui.ts';

/** The step that is on the screen, whoever goes through it. */
export function shownStep({
  opened,
}: LessonUi): { readonly step: LessonStep; readonly key: StepKey; readonly index: number } | null {
  if (opened === null) return null;
  const { ready, goes } = opened;
  const index = goes.how === 'class' ? goes.run.index : (goes.looked ?? goes.run.index);
  const found = stepAt(ready, { index });
  return found === null ? null : { ...found, index };
}

/** Where a key is pressed. */
export function lessonHere(ui: LessonUi): LessonHere {
  const { over, field } = ui;
  const place = placeOf(ui);
  const typesOver =
    over?.kind === 'explain' || over?.kind === 'changes' || over?.kind === 'guess' || over?.kind === 'change';
  const typing = typesOver || (over === null && place === 'predict' && shownStep(ui)?.key.kind === 'number');
  const goes = ui.opened?.goes;
  return {
    place,
    over: over?.kind ?? null,
    typing,
    typed: typing && field.text !== '',
    rows: lessonList(ui)?.length ?? 0,
    tries: goes?.how === 'class' && goes.run.trial !== null,
  };
}

function placeOf({ opened }: LessonUi): LessonHere['place'] {
  if (opened === null) return 'list';
  const { goes } = opened;
  if (goes.how === 'class') return 'class';
  if (goes.looked !== null) return 'earlier';
  return goes.run.phase === 'done' ? 'end' : goes.run.phase;
}

/** A row of the list that is shown: what it says, and what stands behind it. */
export interface LessonRow {
  readonly label: string;
  readonly about: string;
  readonly state: string;
  /** a lesson, a word, a topic, or the place of a given number among those that can be changed */
  readonly value: string;
}

/** The list on the screen, filtered by what is typed over it; null where there is none. */
export function lessonList(ui: LessonUi): readonly LessonRow[] | null {
  const { over, field } = ui;
  if (over?.kind === 'explain') return matching(TOPIC_ROWS, field.text);
  if (over?.kind === 'changes') return matching(changeRows(ui), field.text);
  if (over !== null) return null;
  switch (placeOf(ui)) {
    case 'list':
      return (ui.list ?? []).map(({ name, title, reached }) => ({
        label: title,
        about: '',
        state: reached,
        value: name,
      }));
    case 'predict': {
      const key = shownStep(ui)?.key;
      return key?.kind !== 'choice'
        ? null
        : key.options.map((option) => ({ label: option, about: '', state: '', value: option }));
    }
    case 'end':
      return endRows(ui);
    default:
      return null;
  }
}

const TOPIC_ROWS: readonly LessonRow[] = TOPICS.map((topic) => ({
  label: `${topic.title} (${topic.id})`,
  about: '',
  state: topic.kind,
  value: qualified(topic),
}));

/** The given numbers that can be tried otherwise in the step of a class. */
export function changesHere(ui: LessonUi): ReturnType<typeof changeableOf> {
  const { opened } = ui;
  const shown = shownStep(ui);
  return opened === null || shown === null ? [] : changeableOf(shown.key, opened.ready);
}

function changeRows(ui: LessonUi): readonly LessonRow[] {
  const currency = ui.opened?.ready.lesson.answers.currency ?? '';
  return changesHere(ui).map(({ symbol, words, unit, value }, index) => ({
    label: symbol === '' ? words : `${symbol}  ${words}`,
    about: '',
    state: formatQuantity(value, unit, { shownIn: ui.units, beside: true, grouped: 'thin', currency }),
    value: String(index),
  }));
}

function endRows({ opened }: LessonUi): readonly LessonRow[] {
  if (opened?.goes.how !== 'alone') return [];
  const { scores } = opened.goes.run;
  return opened.ready.lesson.steps.slice(0, scores.length).map((step, index) => ({
    label: step.ask,
    about: '',
    state: `${scores[index] ?? 0} of ${FULL_POINTS}`,
    value: topicOfStep(step) ?? '',
  }));
}
