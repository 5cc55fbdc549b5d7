import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { chanceOf } from '../../bench/interviews/chance.ts';
import { readSessionFile } from '../../src/commands/session-file.ts';
import { readKeys } from '../../src/ui/keys/read-keys.ts';
import { begins, burst, howMany, painted, REPAINT, SEED } from './at-random.ts';
import { KEY, start, type Terminal } from './harness.ts';
import { settled, smallCatalog } from './interview.ts';
import { Meant } from './meant.ts';

const KILLS = howMany('FIVESIDES_KILLS', 6);
const LONGEST = 60_000 + KILLS * 15_000;
const MOST_BURSTS = 12;
const NO_FILE = 'no file';
/** What a write that was cut off leaves beside the file that it was to become. */
const LEFT_OVER = /\.\d+$/;

const catalog = smallCatalog();
const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
const textOf = (file: string): string => (existsSync(file) ? readFileSync(file, 'utf8') : NO_FILE);

/** Every file below a folder, papers' figures too. */
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => relative(folder, join(each.parentPath, each.name)));

/** What each file held after any of the keys that may have been done with. */
class Stages {
  readonly #files = new Map<string, Set<string>>();
  readonly #meant: Meant;

  constructor(meant: Meant) {
    this.#meant = meant;
    this.note();
  }

  note(): void {
    for (const name of [...filesIn(this.#meant.folder), 'kept.json']) {
      const texts = this.#files.get(name) ?? new Set(name === 'kept.json' ? [] : [NO_FILE]);
      this.#files.set(name, texts.add(textOf(join(this.#meant.folder, name))));
    }
  }

  /** Every file is one of its stages; how many stages of the interview were sent as keys and are not in it. */
  expectOneOf(folder: string): number {
    for (const name of filesIn(folder).filter((each) => !LEFT_OVER.test(each))) {
      expect([...(this.#files.get(name) ?? [])], name).toContain(textOf(join(folder, name)));
    }
    const kept = [...(this.#files.get('kept.json') ?? [])];
    const at = kept.indexOf(textOf(join(folder, 'kept.json')));
    expect(at).toBeGreaterThanOrEqual(0);
    return kept.length - 1 - at;
  }
}

/** Some keys, each done with before the next; then some more, and the end in the midst of them. */
async function killedWhilePressing(terminal: Terminal, meant: Meant, chance: () => number): Promise<number> {
  for (let left = Math.floor(chance() * MOST_BURSTS); left > 0; left -= 1) {
    const from = terminal.raw.length;
    const { text, waits } = burst(meant, chance, 0);
    terminal.send(`${text}${REPAINT}`);
    meant.press(readKeys(REPAINT, true).keys);
    await painted(terminal, from);
    if (meant.asked() || waits) await settled(terminal);
  }
  const stages = new Stages(meant);
  const { text } = burst(meant, chance, 0, () => stages.note());
  terminal.send(`${REPAINT}${text}`);
  await pause(chance() * 60);
  terminal.kill('SIGKILL');
  await terminal.ended();
  return stages.expectOneOf(terminal.cwd);
}

test(`requirement 18: killed ${KILLS} times at any moment: the file is whole, and all but what was being typed is there`, {
  timeout: LONGEST,
}, async () => {
  const { next: chance } = chanceOf(SEED + 1);
  const meant = new Meant(catalog);
  const counts = { killed: 0, atStart: 0, resumed: 0, keysBehind: 0, leftOver: 0 };
  let cwd: string | undefined;
  let resumes = false;
  while (counts.killed < KILLS) {
    if (cwd !== undefined && chance() < 0.2) {
      const stages = new Stages(meant);
      const terminal = start({ catalog, cwd, args: resumes ? ['--resume'] : [] });
      await pause(chance() * 500);
      terminal.kill('SIGKILL');
      await terminal.ended();
      expect(stages.expectOneOf(cwd)).toBe(0);
      counts.atStart += 1;
    } else {
      const terminal = await begins(meant, catalog, cwd, resumes);
      cwd = terminal.cwd;
      if (resumes) {
        await settled(terminal);
        expect(terminal.screen()).toEqual(meant.screen(80, 24, join(cwd, 'kept.json')));
        counts.resumed += 1;
      }
      counts.keysBehind += await killedWhilePressing(terminal, meant, chance);
      await terminal.close();
    }
    counts.killed += 1;
    for (const name of filesIn(cwd).filter((each) => LEFT_OVER.test(each))) {
      counts.leftOver += 1;
      rmSync(join(cwd, name));
    }
    // what is there is gone on from, here and there
    rmSync(meant.folder, { recursive: true });
    mkdirSync(meant.folder);
    cpSync(cwd, meant.folder, { recursive: true });
    const found = readSessionFile(meant.file).found;
    expect(found).toBe(existsSync(meant.file) ? 'interview' : 'none');
    resumes = found === 'interview' && chance() < 0.8;
  }
  const last = await begins(meant, catalog, cwd, resumes);
  last.send(`${KEY.ctrlC}${KEY.ctrlC}`);
  expect((await last.ended()).code).toBe(130);
  expect(last.modes).toEqual({ alternate: false, cursor: true, paste: false });
  console.info(JSON.stringify({ seed: SEED, ...counts }));
});
