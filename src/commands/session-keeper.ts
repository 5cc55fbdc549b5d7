import { existsSync } from 'node:fs';
import { extname } from 'node:path';
import { readFileText } from '../documents/read-file.ts';
import { notWritten, writeFileText } from '../documents/write-file.ts';
import type { Saved } from '../session/saved.ts';

/** Beside a file that somebody else writes to, a free name is looked for up to this number. */
const MOST_BESIDE = 999;

/**
 * Keeps the interview of one run in its file, replaced as a whole each time. Two runs on one file do not write over each
 * other: what another one has written there meanwhile stays, and this one goes on in a file of its own beside it.
 */
export class SessionKeeper {
  #file: string;
  /** what the file held when it was last read or written here; null: there was none */
  #known: string | null;
  /** what was to be saved last; null: nothing yet */
  #last: string | null = null;
  #unsaved: string | null = null;
  #moved: string | null = null;

  constructor(file: string, known: string | null) {
    this.#file = file;
    this.#known = known;
  }

  /** The file that the interview is kept in now. */
  get file(): string {
    return this.#file;
  }

  /** Why what was to be saved last is not, in a sentence; null: it is. */
  get unsaved(): string | null {
    return this.#unsaved;
  }

  /** That the last saving went to another file than the one before, in a sentence; null: it did not. */
  get moved(): string | null {
    return this.#moved;
  }

  /** Saves it at once. Gives what somebody has to be told of it, in a sentence; null: all is well. */
  save(saved: Saved): string | null {
    return this.#keep(`${JSON.stringify(saved, null, 2)}\n`);
  }

  /** At the end of a run: what is not in its file, since that was full or another run was faster, is saved once more. */
  settle(): string | null {
    if (this.#last === null || (this.#unsaved === null && this.#there() === this.#last)) return null;
    return this.#keep(this.#last);
  }

  #keep(text: string): string | null {
    this.#last = text;
    this.#moved = null;
    const there = this.#there();
    if (there !== null && there !== this.#known && there !== text) this.#move();
    const writing = writeFileText(this.#file, text, { overwrite: true, makeFolders: true });
    this.#unsaved = writing.ok
      ? null
      : `The interview could not be saved to ${this.#file}: ${notWritten(writing)}.`;
    if (writing.ok) this.#known = text;
    return this.#unsaved ?? this.#moved;
  }

  /** What the file holds; null where there is none, or none that can be read. */
  #there(): string | null {
    const reading = existsSync(this.#file) ? readFileText(this.#file) : null;
    return reading?.ok === true ? reading.value : null;
  }

  #move(): void {
    const taken = this.#file;
    const ending = extname(taken);
    const stem = taken.slice(0, taken.length - ending.length);
    let number = 2;
    while (number < MOST_BESIDE && existsSync(`${stem}-${number}${ending}`)) number += 1;
    this.#file = `${stem}-${number}${ending}`;
    this.#known = null;
    this.#moved = `Another run has written to ${taken} meanwhile, and that stays; this one is kept in ${this.#file}.`;
  }
}
