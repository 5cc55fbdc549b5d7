import type { Painter } from '../draw/painter.ts';
import { plainFrame } from '../draw/plain-frame.ts';
import { isTooSmall, type Size } from '../frame/size.ts';
import type { Key } from '../keys/key.ts';
import { type KeySource, keySource } from '../keys/key-source.ts';
import type { Row } from '../look/row.ts';
import { type EndingSignal, type Watch, watchProcess } from './process-events.ts';
import { enterTerminal, leaveTerminal } from './terminal.ts';

/** How a screen is left. */
export type ScreenEnding =
  | { readonly how: 'finished' | 'quit' }
  | { readonly how: 'signal'; readonly signal: EndingSignal };

/** What the page needs from whoever fills it. */
interface PageFilling {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly ascii: boolean;
  /** all rows of the screen, for its size now */
  readonly rows: () => readonly Row[];
  /** a key that counts: of a window that is too small only Ctrl-C does */
  readonly onKey: (key: Key) => void;
}

/** The whole terminal as a page, until it is left: rows in, keys out; sizes, signals and being stopped for a while are seen to here. */
export class TerminalPage {
  readonly #filling: PageFilling;
  readonly #keys: KeySource;
  readonly #watch: Watch;
  readonly #onResize = (): void => this.draw(true);
  #painter: Painter | null = null;
  #resolve: (ending: ScreenEnding) => void = () => undefined;
  #reject: (error: unknown) => void = () => undefined;
  #closed = false;
  #stopped = false;

  constructor(filling: PageFilling) {
    this.#filling = filling;
    const { stdin, stdout, onKey } = filling;
    this.#keys = keySource(stdin, (key) => {
      const isLeaving = key.kind === 'named' && key.name === 'ctrl-c';
      if (!this.#closed && (isLeaving || !isTooSmall(this.size))) onKey(key);
    });
    this.#watch = watchProcess({
      stdin,
      stdout,
      onEnd: (signal) => this.end({ how: 'signal', signal }),
      onContinue: () => this.#goOn(),
    });
  }

  /** Shows the page until it is left; the terminal is then as it was. */
  run(): Promise<ScreenEnding> {
    return new Promise((resolve, reject) => {
      this.#resolve = resolve;
      this.#reject = reject;
      this.#begin();
    });
  }

  /** A first frame at once, as plain text; then what draws is loaded. */
  #begin(): void {
    const { stdin, stdout, ascii } = this.#filling;
    const onFault = (error: unknown): void => this.fail(error);
    stdout.on('resize', this.#onResize);
    enterTerminal('', stdin);
    this.#keys.start();
    this.draw();
    import('../draw/painter.ts').then(({ createPainter }) => {
      if (this.#closed) return;
      this.#painter = createPainter({
        columns: this.size.columns,
        pointer: ascii ? '>' : '❯',
        write: (text) => void stdout.write(text),
        onFault,
      });
      this.draw(true);
    }, onFault);
  }

  /** Whether it is left. */
  get closed(): boolean {
    return this.#closed;
  }

  get size(): Size {
    const { columns, rows } = this.#filling.stdout;
    return { columns: columns || 80, rows: rows || 24 };
  }

  /** Shows the rows as they are now; `anew`: all of them, whatever stands there. */
  draw(anew = false): void {
    if (this.#closed || this.#stopped) return;
    const { stdout, ascii } = this.#filling;
    const rows = this.#filling.rows();
    if (this.#painter === null) stdout.write(plainFrame(rows, ascii ? '>' : '❯'));
    else if (anew) this.#painter.anew(rows, this.size.columns);
    else this.#painter.show(rows);
  }

  /** Stops the program until the shell goes on with it. */
  suspend(): void {
    this.#stopped = true;
    this.#painter?.stop();
    leaveTerminal(this.#filling.stdin);
    this.#watch.suspend();
  }

  /** The modes may be lost, whoever stopped us: all of them are set again. */
  #goOn(): void {
    if (this.#closed) return;
    this.#stopped = false;
    leaveTerminal(this.#filling.stdin);
    enterTerminal('', this.#filling.stdin);
    this.draw(true);
  }

  /** Leaves the page; once it is left, nothing. */
  end(ending: ScreenEnding): void {
    if (this.#closed) return;
    this.#close();
    this.#resolve(ending);
  }

  /** Leaves the page, since something has failed. */
  fail(error: unknown): void {
    if (this.#closed) return;
    this.#close();
    this.#reject(error);
  }

  /** Gives the terminal back. */
  #close(): void {
    this.#closed = true;
    this.#keys.stop();
    this.#watch.stop();
    this.#filling.stdout.off('resize', this.#onResize);
    this.#painter?.stop();
    leaveTerminal(this.#filling.stdin);
  }
}
