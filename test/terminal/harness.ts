import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type IPty, spawn } from '@lydell/node-pty';
import { Unicode11Addon } from '@xterm/addon-unicode11';
import headless from '@xterm/headless';
import { afterEach, expect } from 'vitest';

/** Keys as a terminal sends them. */
export const KEY = {
  up: '\u001b[A',
  down: '\u001b[B',
  right: '\u001b[C',
  left: '\u001b[D',
  enter: '\r',
  escape: '\u001b',
  shiftTab: '\u001b[Z',
  backspace: '\u007f',
  ctrlC: '\u0003',
  ctrlN: '\u000e',
  ctrlR: '\u0012',
  ctrlT: '\u0014',
  ctrlU: '\u0015',
  ctrlZ: '\u001a',
} as const;

/** Lines that are typed, however fast: a byte that is no key keeps them from being taken for a paste. */
export const typedAhead = (text: string): string => text.replaceAll('\r', '\r\u0000');

export const pasted = (text: string): string => `\u001b[200~${text}\u001b[201~`;

const REPOSITORY = join(import.meta.dirname, '..', '..');
/** `npm test` builds it before. */
export const PROGRAM = join(REPOSITORY, 'dist', 'main.js');
export const DEMO = join(REPOSITORY, 'catalog-demo');

const LONGEST_MS = 60_000;
const QUIET_MS = 60;
const ANSWER_MS = 500;
const ERASED = '\u001b[2J';

export interface StartOptions {
  readonly args?: readonly string[];
  /** asks only what can still change the result; otherwise everything, in the fixed order */
  readonly needed?: boolean;
  /** folder of the catalog; the demo unless said */
  readonly catalog?: string;
  /** what is started instead of the program; a shell, for instance */
  readonly command?: readonly [file: string, ...args: string[]];
  readonly columns?: number;
  readonly rows?: number;
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
}

export interface Exit {
  readonly code: number;
  readonly signal: number;
}

const running: Terminal[] = [];
const folders: string[] = [];
afterEach(async () => {
  const ended = running.splice(0);
  for (const each of ended) await each.close();
  for (const each of folders.splice(0)) rmSync(each, { recursive: true, force: true });
  // whatever was tested: no frame was too tall or too wide, and nothing that the user had in sight before was wiped
  for (const each of ended) {
    expect(each.faults).toEqual([]);
    expect(each.raw).not.toContain('\u001b[3J');
  }
});

export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fivesides-terminal-'));
  folders.push(folder);
  return folder;
}

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** The command of an interview on a catalog, kept in the folder where it runs; it asks everything, or what is needed. */
export const commandOn = (catalog: string, needed = false): readonly [file: string, ...args: string[]] => [
  process.execPath,
  PROGRAM,
  '--catalog',
  catalog,
  '--session',
  'kept.json',
  ...(needed ? [] : ['--ask-all']),
];

/** The program in a real terminal; ended when the test is over. */
export function start(options: StartOptions = {}): Terminal {
  const terminal = new Terminal(options);
  running.push(terminal);
  return terminal;
}

/** A pseudo-terminal with a program in it, and the cells that a user would see. */
export class Terminal {
  readonly cwd: string;
  /** every byte that came, as text */
  raw = '';
  exit: Exit | null = null;
  /** what no frame may do: use the last row of the window, or run into the next row */
  readonly faults: string[] = [];
  #looks = true;
  readonly exited: Promise<Exit>;
  readonly #pty: IPty;
  readonly #cells: headless.Terminal;
  #last = performance.now();
  #pending = 0;

  constructor({
    args = [],
    needed = false,
    catalog = DEMO,
    command,
    columns = 80,
    rows = 24,
    env = {},
    cwd,
  }: StartOptions) {
    this.cwd = cwd ?? emptyFolder();
    this.#cells = new headless.Terminal({
      cols: columns,
      rows,
      scrollback: 2000,
      allowProposedApi: true,
      logLevel: 'off',
    });
    this.#cells.loadAddon(new Unicode11Addon());
    this.#cells.unicode.activeVersion = '11';
    const own: Record<string, string> = { TERM: 'xterm-256color', HOME: this.cwd, XDG_STATE_HOME: '' };
    for (const [name, value] of Object.entries(process.env)) {
      if (!GUESSED.includes(name) && value !== undefined && !(name in own)) own[name] = value;
    }
    const [file, ...rest] = command ?? [...commandOn(catalog, needed), ...args];
    this.#pty = spawn(file, rest, { cols: columns, rows, cwd: this.cwd, env: { ...own, ...env } });
    this.#pty.onData((data) => {
      this.raw += data;
      this.#last = performance.now();
      this.#pending += 1;
      this.#cells.write(data, () => {
        this.#pending -= 1;
        this.#look();
      });
    });
    this.exited = new Promise((resolve) => {
      this.#pty.onExit(({ exitCode, signal }) => {
        this.exit = { code: exitCode, signal: signal ?? 0 };
        resolve(this.exit);
      });
    });
  }

  #look(): void {
    const { active } = this.#cells.buffer;
    if (!this.#looks || active.type !== 'alternate' || this.#cells.modes.synchronizedOutputMode) return;
    const { rows, cols } = this.#cells;
    const at = `${cols}×${rows}`;
    const last =
      active
        .getLine(rows - 1)
        ?.translateToString(true)
        .trim() ?? '';
    if (last !== '') this.faults.push(`the last row is used at ${at}: ${last}`);
    for (let index = 0; index < rows; index += 1) {
      if (active.getLine(index)?.isWrapped === true) this.faults.push(`row ${index} is run into at ${at}`);
    }
  }

  get pid(): number {
    return this.#pty.pid;
  }

  get modes() {
    const shows = this.raw.lastIndexOf('\u001b[?25h') >= this.raw.lastIndexOf('\u001b[?25l');
    return {
      alternate: this.#cells.buffer.active.type === 'alternate',
      cursor: shows,
      paste: this.#cells.modes.bracketedPasteMode,
    };
  }

  /** What a user sees now, a string a row. */
  screen(): readonly string[] {
    const { active } = this.#cells.buffer;
    return Array.from({ length: this.#cells.rows }, (_, index) =>
      (active.getLine(active.baseY + index)?.translateToString(true) ?? '').trimEnd(),
    );
  }

  /** The columns that the text of a row takes, gaps included: a wide letter takes two. */
  columnsOf(row: number): number {
    const { active } = this.#cells.buffer;
    const line = active.getLine(active.baseY + row);
    let used = 0;
    for (let column = 0; column < this.#cells.cols; column += 1) {
      const cell = line?.getCell(column);
      if ((cell?.getChars() ?? '').trim() !== '') used = column + (cell?.getWidth() ?? 1);
    }
    return used;
  }

  text(): string {
    return this.screen().join('\n');
  }

  /** All that is on the normal screen, what has scrolled off included. */
  lines(): readonly string[] {
    const { active } = this.#cells.buffer;
    return Array.from(
      { length: active.length },
      (_, index) => active.getLine(index)?.translateToString(true) ?? '',
    );
  }

  /** Until the screen holds this, and is quiet. */
  async waitFor(what: string | RegExp | ((text: string) => boolean), longest = LONGEST_MS): Promise<string> {
    const from = performance.now();
    const holds = (text: string): boolean =>
      typeof what === 'string' ? text.includes(what) : what instanceof RegExp ? what.test(text) : what(text);
    for (;;) {
      if (this.#pending === 0 && !this.#cells.modes.synchronizedOutputMode && holds(this.text())) {
        await this.quiet();
        if (holds(this.text())) return this.text();
      }
      if (
        performance.now() - from > longest ||
        (this.exit !== null && this.#pending === 0 && !holds(this.text()))
      ) {
        throw new Error(`never saw ${what}; exit ${JSON.stringify(this.exit)}; there is:\n${this.text()}`);
      }
      await pause(5);
    }
  }

  /** Until nothing has come, and nothing was sent, for a moment. */
  async quiet(ms = QUIET_MS, longest = LONGEST_MS): Promise<string> {
    const from = performance.now();
    while (
      performance.now() - this.#last < ms ||
      this.#pending > 0 ||
      // whoever was killed in the middle of a frame never ends it
      (this.exit === null && this.#cells.modes.synchronizedOutputMode)
    ) {
      if (performance.now() - from > longest) throw new Error(`it is never quiet; there is:\n${this.text()}`);
      await pause(5);
    }
    return this.text();
  }

  /** One write, without waiting. */
  send(text: string): void {
    this.#last = performance.now();
    this.#pty.write(text);
  }

  /** Key by key, each shown before the next; a key that shows nothing is waited for a moment longer. */
  async press(...keys: readonly string[]): Promise<string> {
    for (const key of keys) {
      const [before, from] = [this.raw.length, performance.now()];
      this.send(key);
      while (this.raw.length === before && performance.now() - from < ANSWER_MS) await pause(5);
      await this.quiet();
    }
    return this.text();
  }

  /** Another size of the window, and until it is painted anew. */
  async resize(columns: number, rows: number): Promise<string> {
    await this.quiet();
    const before = this.raw.length;
    this.#last = performance.now();
    this.#looks = false;
    this.#cells.resize(columns, rows);
    this.#pty.resize(columns, rows);
    const from = performance.now();
    while (!this.raw.includes(ERASED, before)) {
      if (performance.now() - from > LONGEST_MS) throw new Error(`not painted anew:\n${this.text()}`);
      await pause(5);
    }
    await this.quiet();
    this.#looks = true;
    this.#look();
    return this.text();
  }

  /** The window is closed: the other end of the terminal is gone. */
  hangUp(): void {
    (this.#pty as IPty & { destroy(): void }).destroy();
  }

  kill(signal: NodeJS.Signals): void {
    process.kill(this.pid, signal);
  }

  async ended(longest = LONGEST_MS): Promise<Exit> {
    const late = pause(longest).then(() => {
      throw new Error(`it does not end; there is:\n${this.text()}`);
    });
    late.catch(() => undefined);
    const exit = await Promise.race([this.exited, late]);
    await this.quiet();
    return exit;
  }

  async close(): Promise<void> {
    if (this.exit === null) {
      try {
        this.#pty.kill('SIGKILL');
      } catch {
        // it has ended by itself
      }
      await Promise.race([this.exited, pause(2000)]);
    }
    this.#cells.dispose();
  }
}

/** What the environment of the tests says and a user's does not. */
const GUESSED = [
  'CI',
  'CONTINUOUS_INTEGRATION',
  'NO_COLOR',
  'FORCE_COLOR',
  'COLORTERM',
  'ACCESSIBLE',
  'NODE_OPTIONS',
];
