import type { Key } from '../keys/key.ts';
import { edited, LONGEST_TYPED } from '../keys/text-field.ts';
import { actedInLesson } from './act-lesson.ts';
import { lessonHere } from './lesson-here.ts';
import { LESSON_KEYS } from './lesson-keys.ts';
import { belowLeaving, type LessonTurn, type LessonUi } from './lesson-ui.ts';

/** One key in a lesson: what the screen shows then, and what the shell has to do. Pure. */
export function pressInLesson(ui: LessonUi, key: Key): LessonTurn {
  if (key.kind === 'named' && key.name === 'ctrl-c') {
    if (ui.over?.kind === 'leave') return [ui, [{ kind: 'leave', how: 'interrupted' }]];
    return [{ ...ui, over: { kind: 'leave', under: ui.over } }, []];
  }
  const fresh: LessonUi = { ...belowLeaving(ui), said: null };
  const here = lessonHere(fresh);
  const action = LESSON_KEYS.actionOf(key, here);
  if (action !== null) return actedInLesson(fresh, action, key);
  if (!here.typing) return [fresh, []];
  if (key.kind === 'paste' && key.tooLong) return [{ ...fresh, said: TOO_LONG }, []];
  const field = edited(fresh.field, key);
  if (field === null) return [fresh, []];
  const isFull = field === fresh.field && key.kind !== 'named' && key.text !== '';
  if (isFull) return [{ ...fresh, said: TOO_LONG }, []];
  const filters = here.rows > 0;
  return [{ ...fresh, field, mark: filters ? 0 : fresh.mark }, []];
}

const TOO_LONG = `There is room for ${LONGEST_TYPED} characters: nothing more is taken.`;
