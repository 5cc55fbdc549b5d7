import { type IPty, spawn } from '@lydell/node-pty';

export interface TerminalSize {
  readonly columns: number;
  readonly rows: number;
}

/** What ends a frame that is written as a whole. */
export const FRAME_END = '\u001b[?2026l';

/** Settings of whoever runs the bench that a program would heed. */
const GUESSED = [
  'CI',
  'CONTINUOUS_INTEGRATION',
  'NO_COLOR',
  'FORCE_COLOR',
  'COLORTERM',
  'ACCESSIBLE',
  'NODE_OPTIONS',
];
const LONGEST_MS = 30_000;

/** A program in a pseudo-terminal, and when its bytes came. Times are in milliseconds from its start. */
export class InTerminal {
  /** all that came, as text */
  raw = '';
  readonly #pty: IPty;
  readonly #started = performance.now();
  #last = performance.now();
  #look: (() => void) | null = null;

  /** `args` are those of node. */
  constructor(args: readonly string[], { columns, rows }: TerminalSize, cwd: string) {
    const env: Record<string, string> = {};
    for (const [name, value] of Object.entries(process.env)) {
      if (!GUESSED.includes(name) && value !== undefined) env[name] = value;
    }
    this.#started = performance.now();
    this.#pty = spawn(process.execPath, [...args], {
      cols: columns,
      rows,
      cwd,
      env: { ...env, TERM: 'xterm-256color', HOME: cwd, XDG_STATE_HOME: '' },
    });
    this.#pty.onData((data) => {
      this.raw += data;
      this.#last = performance.now();
      this.#look?.();
    });
  }

  get pid(): number {
    return this.#pty.pid;
  }

  /** When what came first held this. */
  until(holds: (raw: string) => boolean): Promise<number> {
    return new Promise((resolve, reject) => {
      const late = setTimeout(
        () => reject(new Error(`it never came; there is:\n${this.raw.slice(-3000)}`)),
        LONGEST_MS,
      );
      this.#look = () => {
        if (!holds(this.raw)) return;
        this.#look = null;
        clearTimeout(late);
        resolve(this.#last - this.#started);
      };
      this.#look();
    });
  }

  /** Until nothing has come, nor was sent, for so long. */
  async quiet(ms: number): Promise<void> {
    for (let left = ms; left > 0; left = ms - (performance.now() - this.#last)) await pause(left);
  }

  send(key: string): void {
    this.#last = performance.now();
    this.#pty.write(key);
  }

  /** From a key to the end of the frame that shows what it did, in milliseconds. */
  async painted(key: string, shows: (since: string) => boolean): Promise<number> {
    const from = this.raw.length;
    const sent = performance.now() - this.#started;
    this.send(key);
    return (await this.until((raw) => shows(raw.slice(from)))) - sent;
  }

  async end(): Promise<void> {
    const ended = new Promise((resolve) => this.#pty.onExit(resolve));
    this.#pty.kill('SIGKILL');
    await ended;
  }
}

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, Math.ceil(ms)));
