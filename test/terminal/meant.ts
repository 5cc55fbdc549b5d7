import { join } from 'node:path';
import { expect } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { perform } from '../../src/commands/plain/perform.ts';
import { readSessionFile } from '../../src/commands/session-file.ts';
import { SessionKeeper } from '../../src/commands/session-keeper.ts';
import { jsonReport, markdownReport, paperInFile } from '../../src/report/index.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import { decide } from '../../src/rules/decide.ts';
import { givenAt, type Kept, type Subject } from '../../src/session/kept.ts';
import { newSession, offered, resumed } from '../../src/session/start.ts';
import { withoutTrial } from '../../src/session/trial.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { plainFrame } from '../../src/ui/draw/plain-frame.ts';
import { frame } from '../../src/ui/frame/frame.ts';
import type { Key } from '../../src/ui/keys/key.ts';
import { happened } from '../../src/ui/state/happened.ts';
import { press } from '../../src/ui/state/press.ts';
import { situationOf } from '../../src/ui/state/situation.ts';
import { beginning, type Request, type Ui } from '../../src/ui/state/ui.ts';
import { emptyFolder } from './harness.ts';

/** What the screen ought to be: the same keys, pressed without a terminal, and a folder that its files are written to. */
export class Meant {
  readonly folder = emptyFolder();
  readonly #catalog: Catalog;
  readonly #folder: string;
  #world: World;
  /** the same world, where nobody notes what is asked for */
  #unseen: World;
  #asked = false;
  #ui: Ui;
  #keeper = new SessionKeeper(this.file, null);
  left: 'not' | 'finished' | 'quit' | 'interrupted' = 'not';

  constructor(folder: string) {
    const read = readCatalog([folder]);
    if (!read.ok) throw new Error('the catalog cannot be read');
    this.#catalog = read.value;
    this.#folder = folder;
    [this.#world, this.#ui, this.#unseen] = this.#begun(false);
  }

  /** As the program begins with what is kept; not a decision is there. */
  begins(resumes: boolean): void {
    this.left = 'not';
    [this.#world, this.#ui, this.#unseen] = this.#begun(resumes);
  }

  #begun(resumes: boolean): readonly [World, Ui, World] {
    const own = createWorld(this.#catalog, decide, askingOf);
    // each decision is worked out once for the same answers, so it is waited for once
    const asks = <Result>(work: (kept: Kept) => Result) => {
      const seen = new WeakSet<Kept>();
      return (kept: Kept): Result => {
        if (!seen.has(kept)) this.#asked = true;
        seen.add(kept);
        return work(kept);
      };
    };
    const everyArrangement = asks(own.everyArrangement);
    const world = {
      ...own,
      decision: asks(own.decision),
      decisionWithRanges: asks(own.decisionWithRanges),
      everyArrangement,
      asking: asks(own.asking),
    };
    const folders = [this.#folder];
    const found = readSessionFile(this.file);
    this.#keeper = new SessionKeeper(this.file, found.found === 'interview' ? found.text : null);
    if (found.found !== 'interview')
      return [world, beginning(newSession(world, folders, null, 'all'), START), own];
    // as the program is started
    const saved = { ...found.saved, asks: 'all' } as const;
    return resumes
      ? [world, beginning(resumed(saved, world, folders, null), null), own]
      : [world, beginning(offered(saved, folders, null), START), own];
  }

  /** The rows of the screen, as they are painted once everything is worked out. */
  screen(columns: number, rows: number, sessionFile: string): readonly string[] {
    const drawing = { world: this.#unseen, ascii: false, color: true, sessionFile, unsaved: null };
    const text = plainFrame(frame(this.#ui, { columns, rows }, drawing), '❯');
    return [...text.replace(/^\S*\[H/, '').split('\r\n'), ''];
  }

  get file(): string {
    return join(this.folder, 'kept.json');
  }

  /** Whether these keys would end the program. They are not pressed, so the program works nothing out for them. */
  wouldLeave(keys: readonly Key[]): boolean {
    let ui = this.#ui;
    for (const key of keys) {
      const [next, requests] = press(ui, key, this.#unseen);
      if (requests.some(ends)) return true;
      ui = next;
    }
    return false;
  }

  /** Keys one after the other, what they ask for done at once. */
  press(keys: readonly Key[]): void {
    for (const key of keys) {
      if (this.left !== 'not') return;
      const before = this.#ui;
      const [next, requests] = press(before, key, this.#world);
      this.#ui = next;
      expectNothingLost(before, next);
      this.#do(requests);
    }
    // what is listed hangs on a decision, too
    situationOf(this.#ui, this.#world);
  }

  /** Whether something was asked for, since this was last looked at, that the program has to work out first. */
  asked(): boolean {
    const asked = this.#asked;
    this.#asked = false;
    return asked;
  }

  #do(requests: readonly Request[]): void {
    for (const request of requests) {
      // who leaves where the result stands has finished, also with something tried
      if (request.kind === 'leave')
        this.left =
          request.how === 'quit' && withoutTrial(this.#ui.session).at.at === 'result'
            ? 'finished'
            : request.how;
      if (request.kind === 'open') this.#ui = { ...this.#ui, over: { kind: 'open', error: 'no such file' } };
      if (request.kind !== 'effect') continue;
      const { effect } = request;
      if (effect.kind === 'finish') {
        this.left = 'finished';
        return;
      }
      const warn = (words: string): never => expect.fail(words);
      const disk = {
        markdown: markdownReport,
        json: jsonReport,
        paper: paperInFile,
        keeper: this.#keeper,
        cwd: this.folder,
        warn,
      };
      for (const event of perform(effect, this.#ui.session, this.#world, disk)) {
        const [next, more] = happened(this.#ui, event, this.#world);
        this.#ui = next;
        this.#do(more);
      }
    }
  }
}

const START = { kind: 'start' } as const;

const ends = (request: Request): boolean =>
  request.kind === 'leave' || (request.kind === 'effect' && request.effect.kind === 'finish');

/** Every answer stays as it was: unless that very one was given anew, taken back, or its part was taken out. */
function expectNothingLost(before: Ui, after: Ui): void {
  const [was, is] = [before.session.kept, after.session.kept];
  if (was === is) return;
  const undid = after.history.length < before.history.length;
  if (undid) {
    expect(is).toEqual(before.history.at(-1)?.kept);
    return;
  }
  // what is tried is left, and the answers of the interview are there as they were; or a variant is looked at
  const [tried, tries] = [before.session.trial, after.session.trial];
  if (tried !== null && tries === null && is === tried.before.kept) return;
  if (tried === null && tries !== null) {
    expect(tries.before.kept).toEqual(was);
    return;
  }
  const { at } = before.session;
  // begun anew, on request
  if (at.at === 'resume' && is.parts.length === 0 && Object.keys(is.shop).length === 0) return;
  const note = after.session.note;
  const removed = at.at === 'remove' && is.parts.length < was.parts.length ? at.part : null;
  const indexIn = new Map<number, number>();
  let index = 0;
  for (const [old, answers] of was.parts.entries()) {
    // a part without any answer is none
    if (old === removed || (Object.keys(answers).length === 0 && is.parts[index] === undefined)) continue;
    indexIn.set(old, index);
    index += 1;
  }
  const subjects: readonly Subject[] = [null, ...indexIn.keys()];
  for (const subject of subjects) {
    const answers = subject === null ? was.shop : (was.parts[subject] ?? {});
    const now = subject === null ? null : (indexIn.get(subject) ?? null);
    for (const id of Object.keys(answers)) {
      if (note?.kind === 'accepted' && note.id === id && note.subject === now) continue;
      expect(givenAt(is, now, id), `${id} of ${subject}`).toEqual(answers[id]);
    }
  }
}
