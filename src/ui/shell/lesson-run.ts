import type { ClassRun } from '../../teaching/lessons/class-run.ts';
import type { LessonRun } from '../../teaching/lessons/run-lesson.ts';
import type { Key } from '../keys/key.ts';
import { lessonFrame } from '../lesson/lesson-frame.ts';
import type { LessonRequest, LessonUi, ListedLesson, OpenedLesson } from '../lesson/lesson-ui.ts';
import { pressInLesson } from '../lesson/press-lesson.ts';
import { workedOn } from '../lesson/work.ts';
import type { Row } from '../look/row.ts';
import { type ScreenEnding, TerminalPage } from './terminal-page.ts';

/** What the screen of lessons needs from outside. */
export interface LessonSurroundings {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly ascii: boolean;
  readonly color: boolean;
  /** where points are kept */
  readonly sessionFile: string;
  /** every lesson that there is, with how far somebody has come now */
  readonly list: () => readonly ListedLesson[];
  /** a lesson by its name, ready to be gone through; or what is wrong with it */
  readonly open: (name: string) => OpenedLesson | { readonly why: string };
  /** called after every event, so that nothing is lost; a sentence where it could not be kept */
  readonly keep: (name: string, run: LessonRun) => string | null;
  /** the same of a class */
  readonly keepClass: (name: string, run: ClassRun) => string | null;
}

export interface LessonLeft {
  readonly ui: LessonUi;
  readonly ending: ScreenEnding;
}

/** Lessons on the whole screen, until they are left; the terminal is then as it was. */
export const runLessonScreen = (ui: LessonUi, around: LessonSurroundings): Promise<LessonLeft> =>
  new LessonScreen(ui, around).run();

class LessonScreen {
  readonly #around: LessonSurroundings;
  readonly #page: TerminalPage;
  #ui: LessonUi;
  #unsaved: string | null = null;

  constructor(ui: LessonUi, around: LessonSurroundings) {
    this.#ui = ui;
    this.#around = around;
    const { stdin, stdout, ascii } = around;
    this.#page = new TerminalPage({
      stdin,
      stdout,
      ascii,
      rows: () => this.#rows(),
      onKey: (key) => this.#onKey(key),
    });
  }

  async run(): Promise<LessonLeft> {
    const ending = await this.#page.run();
    return { ui: this.#ui, ending };
  }

  #rows(): readonly Row[] {
    const { ascii, color, sessionFile } = this.#around;
    return lessonFrame(this.#ui, this.#page.size, { ascii, color, sessionFile, unsaved: this.#unsaved });
  }

  #onKey(key: Key): void {
    // keys that came meanwhile are meant for what comes out
    this.#work();
    const [next, requests] = pressInLesson(this.#ui, key);
    this.#ui = next;
    for (const request of requests) this.#do(request);
    this.#page.draw();
    // drawn first, so that it is seen what is waited for
    if (this.#ui.work !== null) setImmediate(() => this.#worked());
  }

  #worked(): void {
    if (this.#page.closed || this.#ui.work === null) return;
    try {
      this.#work();
      this.#page.draw();
    } catch (error) {
      this.#page.fail(error);
    }
  }

  #work(): void {
    this.#ui = workedOn(this.#ui, this.#around.open);
  }

  #do(request: LessonRequest): void {
    switch (request.kind) {
      case 'keep':
        this.#unsaved = this.#around.keep(request.name, request.run);
        break;
      case 'keep class':
        this.#unsaved = this.#around.keepClass(request.name, request.run);
        break;
      case 'list':
        this.#ui = { ...this.#ui, list: this.#around.list() };
        break;
      case 'suspend':
        this.#page.suspend();
        break;
      case 'repaint':
        this.#page.draw(true);
        break;
      case 'leave':
        this.#page.end(request.how === 'quit' ? { how: 'quit' } : { how: 'signal', signal: 'SIGINT' });
    }
  }
}
