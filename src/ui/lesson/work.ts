import { inClass } from './act-lesson.ts';
import { type LessonUi, type OpenedLesson, turned } from './lesson-ui.ts';

/** What takes a moment is done: a lesson is made ready, or what is tried is decided. The same where nothing waits. */
export function workedOn(
  waiting: LessonUi,
  open: (name: string) => OpenedLesson | { readonly why: string },
): LessonUi {
  const { work } = waiting;
  if (work === null) return waiting;
  const ui = { ...waiting, work: null, said: null };
  if (work.kind === 'open') {
    const opened = open(work.name);
    return 'why' in opened ? { ...ui, said: opened.why } : turned(ui, { opened });
  }
  const [tried] = inClass(ui, { type: 'try', of: work.of, typed: work.typed, units: ui.units });
  const goes = tried.opened?.goes;
  const isRefused = goes?.how === 'class' && goes.run.refused !== null;
  // what was refused stays typed, to be mended
  return isRefused
    ? { ...ui, opened: tried.opened, said: tried.said }
    : { ...tried, over: { kind: 'tried' } };
}
