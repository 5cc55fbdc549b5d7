import { CLASS_START } from '../../../src/teaching/lessons/class-run.ts';
import { keptRuns, keptRunsText } from '../../../src/teaching/lessons/kept-runs.ts';
import { LESSON_START, type LessonRun } from '../../../src/teaching/lessons/run-lesson.ts';
import type { Size } from '../../../src/ui/frame/size.ts';
import type { Key, NamedKey } from '../../../src/ui/keys/key.ts';
import { named } from '../../../src/ui/keys/key.ts';
import { lessonFrame } from '../../../src/ui/lesson/lesson-frame.ts';
import {
  type LessonRequest,
  type LessonUi,
  lessonBeginning,
  type OpenedLesson,
} from '../../../src/ui/lesson/lesson-ui.ts';
import { pressInLesson } from '../../../src/ui/lesson/press-lesson.ts';
import { workedOn } from '../../../src/ui/lesson/work.ts';
import { textOfRow } from '../../../src/ui/look/row.ts';
import { readyLesson } from '../../teaching/lessons/lesson-fixture.ts';

const DRAWING = { ascii: false, color: true, sessionFile: '/state/lessons.json', unsaved: null };

export const openedAlone = (name: string, run: LessonRun = LESSON_START): OpenedLesson => ({
  name,
  ready: readyLesson(name),
  goes: { how: 'alone', run, looked: null, wrong: [] },
});

export const openedForClass = (name: string): OpenedLesson => ({
  name,
  ready: readyLesson(name),
  goes: { how: 'class', run: CLASS_START },
});

/** A screen of lessons that keys are pressed on, with all that it asked the shell for. */
export class LessonHand {
  ui: LessonUi;
  readonly requests: LessonRequest[] = [];

  constructor(opened: OpenedLesson | null, list: LessonUi['list'] = null) {
    this.ui = lessonBeginning(list, opened, 'mm');
  }

  /** Text is typed sign by sign; names of keys stand in a list. */
  press(...keys: readonly (string | readonly [NamedKey])[]): this {
    for (const each of keys) {
      const all: readonly Key[] =
        typeof each === 'string' ? [...each].map((text) => ({ kind: 'text', text })) : [named(each[0])];
      for (const key of all) {
        const [ui, requests] = pressInLesson(this.ui, key);
        this.requests.push(...requests);
        this.ui = workedOn(ui, () => ({ why: 'nothing is opened here' }));
      }
    }
    return this;
  }

  screen(size: Size = { columns: 80, rows: 24 }, ascii = false): string {
    return lessonFrame(this.ui, size, { ...DRAWING, ascii })
      .map(textOfRow)
      .join('\n');
  }

  /** The run as it was kept last, read back from the text of its file. */
  kept(): LessonRun | undefined {
    const last = this.requests.findLast((each) => each.kind === 'keep');
    return last?.kind === 'keep' ? keptRuns(keptRunsText({ it: last.run }))?.it : undefined;
  }
}

export const ENTER = ['enter'] as const;
export const LEFT = ['left'] as const;
export const ESCAPE = ['escape'] as const;
