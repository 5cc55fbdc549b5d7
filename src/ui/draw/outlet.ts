const isFrame = (text: string): boolean => text.includes('\n');

/**
 * Stands between what draws and the terminal: of endless height, so that nothing is ever wiped; silent on request.
 * The drawing library writes what is different relative to the last row of the frame, but leaves the cursor one row
 * below it; so the cursor is put on that row before each frame but the first. Being absolute, it never drifts.
 */
export class Outlet {
  readonly isTTY = true;
  readonly rows = 100_000;
  columns: number;
  muted = false;
  /** rows of the frame that stands on the screen; 0: none does yet */
  #height = 0;
  readonly #write: (text: string) => void;

  constructor(columns: number, write: (text: string) => void) {
    this.columns = columns;
    this.#write = write;
  }

  write(text: string): boolean {
    if (this.muted) return true;
    if (!isFrame(text)) {
      this.#write(text);
      return true;
    }
    this.#write(this.#height === 0 ? text : `\u001b[${this.#height};1H${text}`);
    if (this.#height === 0) this.#height = text.split('\n').length - 1;
    return true;
  }

  // sizes are told by painting anew
  on(): this {
    return this;
  }

  off(): this {
    return this;
  }
}
