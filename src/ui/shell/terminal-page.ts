import type { Painter } from '../draw/painter.ts';
import { plainFrame } from '../draw/plain-frame.ts';
import type { Size } from '../frame/size.ts';
import type { Key } from '../keys/key.ts';
import { type KeySource, keySource } from '../keys/key-source.ts';
import type { Row } from '../look/row.ts';
import { type EndingSignal, type Watch, watchProcess } from './process-events.ts';
import { enterTerminal, leaveTerminal } from './terminal.ts';

/** What the page needs from whoever fills it. */
export interface PageFilling {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly ascii: boolean;
  /** all rows of the screen, for its size now */
  readonly rows: () => readonly Row[];
  readonly onKey: (key: Key) => void;
  readonly onSignal: (signal: EndingSignal) => void;
  /** what draws has failed; the page is closed by whoever fills it */
  readonly onFault: (error: unknown) => void;
}

/** The whole terminal as a page: rows in, keys out; sizes, signals and being stopped for a while are seen to here. */
export class TerminalPage {
  readonly #filling: PageFilling;
  readonly #keys: KeySource;
  readonly #watch: Watch;
  readonly #onResize = (): void => this.draw(true);
  #painter: Painter | null = null;
  #closed = false;
  #stopped = false;

  constructor(filling: PageFilling) {
    this.#filling = filling;
    const { stdin, stdout, onKey, onSignal } = filling;
    this.#keys = keySource(stdin, (key) => {
      if (!this.#closed) onKey(key);
    });
    this.#watch = watchProcess({ stdin, stdout, onEnd: onSignal, onContinue: () => this.#goOn() });
  }

  /** A first frame at once, as plain text; then what draws is loaded. */
  begin(): void {
    const { stdin, stdout, ascii, onFault } = this.#filling;
    stdout.on('resize', this.#onResize);
    enterTerminal('', stdin);
    this.#keys.start();
    this.draw();
    import('../draw/painter.ts').then(
      ({ createPainter }) => {
        if (this.#closed) return;
        this.#painter = createPainter({
          columns: this.size.columns,
          pointer: ascii ? '>' : '❯',
          write: (text) => void stdout.write(text),
          onFault,
        });
        this.draw(true);
      },
      (error: unknown) => onFault(error),
    );
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

  /** Gives the terminal back. */
  close(): void {
    if (this.#closed) return;
    this.#closed = true;
    this.#keys.stop();
    this.#watch.stop();
    this.#filling.stdout.off('resize', this.#onResize);
    this.#painter?.stop();
    leaveTerminal(this.#filling.stdin);
  }
}
