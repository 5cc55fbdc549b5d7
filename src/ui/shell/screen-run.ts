import type { Effect, Session } from '../../session/session.ts';
import { frame } from '../frame/frame.ts';
import { isTooSmall } from '../frame/size.ts';
import type { Key } from '../keys/key.ts';
import type { Row } from '../look/row.ts';
import { happened, linesOver, nextAsked } from '../state/happened.ts';
import { NotYet } from '../state/not-yet.ts';
import { press } from '../state/press.ts';
import { beginning, type Request, type Ui } from '../state/ui.ts';
import { decideFor } from './decide-for.ts';
import type { ScreenEnding, ScreenLeft, Surroundings } from './run.ts';
import { TerminalPage } from './terminal-page.ts';

const WORKING = 'This is being worked out … Esc goes back.';

/** One run of the screen: keys in, rows out, and what has to be done besides. */
export class ScreenRun {
  readonly #around: Surroundings;
  readonly #resolve: (left: ScreenLeft) => void;
  readonly #reject: (error: unknown) => void;
  readonly #page: TerminalPage;
  #ui: Ui;
  #ended = false;
  /** keys that came while the first of them waits for a decision */
  #queue: Key[] = [];
  #waits = false;

  constructor(
    session: Session,
    starts: boolean,
    around: Surroundings,
    resolve: (left: ScreenLeft) => void,
    reject: (error: unknown) => void,
  ) {
    this.#around = around;
    this.#resolve = resolve;
    this.#reject = reject;
    this.#ui = beginning(session, starts ? { kind: 'start' } : linesOver(session));
    const { stdin, stdout, ascii } = around;
    this.#page = new TerminalPage({
      stdin,
      stdout,
      ascii,
      rows: () => this.#rows(),
      onKey: (key) => this.#onKey(key),
      onSignal: (signal) => this.#end({ how: 'signal', signal }),
      onFault: (error) => this.#fail(error),
    });
  }

  begin(): void {
    this.#around.onDecision(() => (this.#waits || this.#isBetween ? this.#work() : this.#page.draw()));
    this.#page.begin();
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
    if (this.#ended) return;
    const name = key.kind === 'named' ? key.name : '';
    if (isTooSmall(this.#page.size) && name !== 'ctrl-c') return;
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
    while (!this.#ended && this.#asksNext()) {
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
      if (this.#ended) return;
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
          this.#end(request.how === 'quit' ? { how: 'quit' } : { how: 'signal', signal: 'SIGINT' });
      }
    }
  }

  #perform(effect: Effect): void {
    if (effect.kind === 'finish') {
      this.#end({ how: 'finished' });
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

  #end(ending: ScreenEnding): void {
    if (this.#ended) return;
    this.#close();
    this.#resolve({ session: this.#ui.session, ending });
  }

  #fail(error: unknown): void {
    if (this.#ended) return;
    this.#close();
    this.#reject(error);
  }

  #close(): void {
    this.#ended = true;
    this.#page.close();
  }
}
