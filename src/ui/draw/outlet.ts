/** Stands between what draws and the terminal: of endless height, so that nothing is ever wiped; silent on request. */
export class Outlet {
  readonly isTTY = true;
  readonly rows = 100_000;
  columns: number;
  muted = false;
  readonly #write: (text: string) => void;

  constructor(columns: number, write: (text: string) => void) {
    this.columns = columns;
    this.#write = write;
  }

  write(text: string): boolean {
    if (!this.muted) this.#write(text);
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
