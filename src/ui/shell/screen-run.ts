import type { Effect, Session } from '../../session/session.ts';
import { frame } from '../frame/frame.ts';
import type { Key } from '../keys/key.ts';
import type { Row } from '../look/row.ts';
import { happened, linesOver, nextAsked } from '../state/happened.ts';
import { NotYet } from '../state/not-yet.ts';
import { press } from '../state/press.ts';
import { beginning, type Request, type Ui } from '../state/ui.ts';
import { decideFor } from './decide-for.ts';
import type { ScreenLeft, Surroundings } from './run.ts';
import { TerminalPage } from './terminal-page.ts';

const WORKING = 'This is being worked out … Esc goes back.';

/** One run of the screen: keys in, rows out, and what has to be done besides. */
export class ScreenRun {
  readonly #around: Surroundings;
  readonly #page: TerminalPage;
  #ui: Ui;
  /** keys that came while the first of them waits for a decision */
  #queue: Key[] = [];
  #waits = false;

  constructor(session: Session, starts: boolean, around: Surroundings) {
    this.#around = around;
    this.#ui = beginning(session, starts ? { kind: 'start' } : linesOver(session));
    const { stdin, stdout, ascii } = around;
    this.#page = new TerminalPage({
      stdin,
      stdout,
      ascii,
      rows: () => this.#rows(),
      onKey: (key) => this.#onKey(key),
    });
  }

  async run(): Promise<ScreenLeft> {
    this.#around.onDecision(() => (this.#waits || this.#isBetween ? this.#work() : this.#page.draw()));
    const ending = await this.#page.run();
    return { session: this.#ui.session, ending };
  }

  #rows(): readonly Row[] {
    const { world, ascii, color, sessionFile, unsaved, judge } = this.#around;
    // what the waiting key needs stays wanted first
    if (!this.#waits) judge?.forget();
    // which question comes next is wanted before what an answer did
    if (this.#isBetween) world.asking(this.#ui.session.kept);
    const ui = this.#waits ? { ...this.#ui, said: WORKING } : this.#ui;
    const drawing = { world, ascii, color, sessionFile, unsaved: unsaved(ui.session) };
    const rows = frame(ui, this.#page.size, drawing);
    judge?.work();
    return rows;
  }

  #onKey(key: Key): void {
    const name = key.kind === 'named' ? key.name : '';
    const leaves = name === 'ctrl-c' || name === 'escape';
    if (leaves && this.#waits) {
      this.#waits = false;
      this.#queue = name === 'ctrl-c' ? [key] : [];
    } else this.#queue = leaves && this.#isBetween ? [key] : [...this.#queue, key];
    if (leaves && this.#isBetween) this.#pressed(key);
    if (!this.#waits) this.#work();
  }

  /** Every key in its order; one that hangs on a decision holds up those after it until that is there. */
  #work(): void {
    while (!this.#page.closed && this.#asksNext()) {
      const [key] = this.#queue;
      if (key === undefined) break;
      if (!this.#pressed(key)) break;
    }
    this.#page.draw();
  }

  /** Between an answer and the next question, which is still being worked out. */
  get #isBetween(): boolean {
    return this.#ui.session.at.at === 'next';
  }

  /** Whether keys can go on: the question that they are meant for is known. */
  #asksNext(): boolean {
    if (!this.#isBetween) return true;
    const [next, requests] = nextAsked(this.#ui, this.#around.world);
    this.#ui = next;
    this.#doAll(requests);
    return !this.#isBetween;
  }

  /** Whether the key is done with. */
  #pressed(key: Key): boolean {
    try {
      const [next, requests] = press(this.#ui, key, this.#around.world);
      // a decision may have been forgotten since; with it nothing of what is asked for has to wait
      decideFor(requests, next.session, this.#around.world);
      this.#ui = next;
      this.#waits = false;
      this.#queue = this.#queue.slice(1);
      this.#doAll(requests);
      return true;
    } catch (error) {
      if (!(error instanceof NotYet)) throw error;
      this.#waits = true;
      return false;
    }
  }

  #doAll(requests: readonly Request[]): void {
    for (const request of requests) {
      if (this.#page.closed) return;
      switch (request.kind) {
        case 'effect':
          this.#perform(request.effect);
          break;
        case 'open':
          this.#open(request.file);
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

  #perform(effect: Effect): void {
    if (effect.kind === 'finish') {
      this.#page.end({ how: 'finished' });
      return;
    }
    for (const event of this.#around.perform(effect, this.#ui.session)) {
      const [next, requests] = happened(this.#ui, event, this.#around.world);
      this.#ui = next;
      this.#doAll(requests);
    }
  }

  #open(file: string): void {
    const found = this.#around.open(file, this.#ui.session);
    if ('why' in found) {
      this.#ui = { ...this.#ui, over: { kind: 'open', error: found.why } };
      return;
    }
    this.#ui = beginning(found, null);
    this.#perform({ kind: 'save' });
  }
}
