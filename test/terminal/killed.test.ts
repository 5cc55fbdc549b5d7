import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Kept, NOTHING_KEPT } from '../../src/session/kept.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { emptyFolder, KEY, start, type Terminal, typedAhead } from './harness.ts';
import {
  answered,
  begun,
  HINGE,
  question,
  savedBy,
  settled,
  smallCatalog,
  type Turn,
  turnsOf,
  undecided,
  until,
} from './interview.ts';

const catalog = smallCatalog();
const world = undecided(catalog);
const TURNS = turnsOf(HINGE, world);

/** What is kept after each turn of the interview; before the first, nothing. */
function keptAfterEach(turns: readonly Turn[]): readonly Kept[] {
  let session = newSession(world, [], null, 'all');
  const after: Kept[] = [NOTHING_KEPT];
  for (const { id, line } of turns) {
    [session] = step(session, id === 'parts' ? { type: 'accept' } : { type: 'reply', text: line }, world);
    after.push(session.kept);
  }
  return after;
}

async function killed(terminal: Terminal): Promise<void> {
  terminal.kill('SIGKILL');
  await terminal.ended();
}

const goesOn = (cwd: string): Terminal => start({ catalog, cwd, args: ['--resume'] });

/** The file is whole, no half of a file lies beside it, and the interview goes on where it is open. */
async function lastsAfter(terminal: Terminal, kept: Kept, next: Turn): Promise<Terminal> {
  await killed(terminal);
  expect(savedBy(terminal).answers).toEqual(kept);
  const again = goesOn(terminal.cwd);
  await again.waitFor(next.title);
  expect(savedBy(again).answers).toEqual(kept);
  return again;
}

const turnOf = (id: string): Turn => {
  const turn = TURNS.find((each) => each.id === id);
  if (turn === undefined) throw new Error(`${id} is never asked`);
  return turn;
};
const keptBefore = (id: string): Kept => keptAfterEach(until(TURNS, id)).at(-1) ?? NOTHING_KEPT;

async function at(id: string): Promise<Terminal> {
  const terminal = await begun({ catalog });
  await answered(terminal, until(TURNS, id));
  await terminal.waitFor(turnOf(id).title);
  return terminal;
}

describe('requirement 18: killed, and gone on with', () => {
  test('while an answer is typed: all but that one is there', async () => {
    const terminal = await at('size');
    await terminal.press('123 x 4');
    await lastsAfter(terminal, keptBefore('size'), turnOf('size'));
  });

  test('while something is judged, with a list over the screen', async () => {
    const terminal = await at('material');
    terminal.send(`${KEY.down}g`);
    await terminal.waitFor('Jump to a question');
    await lastsAfter(terminal, keptBefore('material'), turnOf('material'));
  });

  test('after an earlier answer was changed: the change is there, and what was open is asked', async () => {
    const terminal = await at('approaches');
    await terminal.press('g', 'material', '\r');
    await terminal.waitFor(/❯ .*alumin/i);
    terminal.send('1\r');
    await terminal.waitFor(turnOf('approaches').title);
    const { answers } = savedBy(terminal);
    expect(answers.parts[0]).toMatchObject({ material: { from: 'typed' } });
    expect(answers).not.toEqual(keptBefore('approaches'));
    const again = await lastsAfter(terminal, answers, turnOf('approaches'));
    await again.press(KEY.ctrlR);
    await again.waitFor(/Hinge: Material: carbon steel +typed/);
  });

  test('at the result: the review is there again, with nothing open', async () => {
    const terminal = await begun({ catalog });
    await answered(terminal, TURNS);
    await terminal.waitFor('every question is answered');
    terminal.send('t');
    await terminal.waitFor('The answer');
    await killed(terminal);
    const again = goesOn(terminal.cwd);
    await again.waitFor('every question is answered');
    expect(savedBy(again).answers).toEqual(keptAfterEach(TURNS).at(-1));
  });

  test.each([0, 20, 60, 150])(
    '%i ms after many answers in one write: what is kept is the answers up to one of them',
    async (ms) => {
      const turns = until(TURNS, 'size');
      const terminal = await begun({ catalog });
      terminal.send(typedAhead(turns.map(({ keys }) => keys).join('')));
      await new Promise((done) => setTimeout(done, ms));
      const seen = terminal.text();
      await killed(terminal);
      const file = join(terminal.cwd, 'kept.json');
      const stages = keptAfterEach(turns).map((kept) => JSON.stringify(kept));
      const kept = existsSync(file) ? savedBy(terminal).answers : NOTHING_KEPT;
      const reached = stages.lastIndexOf(JSON.stringify(kept));
      expect(reached, JSON.stringify(kept)).toBeGreaterThanOrEqual(0);
      // what the screen showed as taken is in the file
      const shown = turns.filter(({ title }) => new RegExp(title).test(seen));
      for (const turn of shown) expect(reached).toBeGreaterThanOrEqual(turns.indexOf(turn));
      if (reached === 0) return;
      const again = goesOn(terminal.cwd);
      await again.waitFor(TURNS[reached]?.title ?? '');
    },
  );
});

describe('requirement 18: the file of an interview', () => {
  test('what a killed run left beside it does no harm', async () => {
    const terminal = await at('name');
    await killed(terminal);
    const whole = readFileSync(join(terminal.cwd, 'kept.json'), 'utf8');
    const left = join(terminal.cwd, 'kept.json.1234567890');
    writeFileSync(left, whole.slice(0, whole.length / 2));
    const again = goesOn(terminal.cwd);
    await again.waitFor(turnOf('name').title);
    again.send('Hinge\r');
    await again.waitFor(turnOf('shape').title);
    expect(savedBy(again).answers).toEqual(keptBefore('shape'));
    expect(readFileSync(left, 'utf8')).toBe(whole.slice(0, whole.length / 2));
  });

  test('it is replaced as a whole: whoever has it open reads on in the old one, and nothing stays beside it', async () => {
    const terminal = await at('name');
    const { openSync, readSync, closeSync } = await import('node:fs');
    const file = join(terminal.cwd, 'kept.json');
    const before = readFileSync(file, 'utf8');
    const open = openSync(file, 'r');
    terminal.send('Hinge\r');
    await terminal.waitFor(turnOf('shape').title);
    const bytes = Buffer.alloc(100_000);
    const read = bytes.toString('utf8', 0, readSync(open, bytes, 0, bytes.length, 0));
    closeSync(open);
    expect(read).toBe(before);
    expect(readFileSync(file, 'utf8')).not.toBe(before);
    expect(readdirSync(terminal.cwd)).toEqual(['kept.json']);
  });

  test.each([
    ['of another format', '{"format":"fivesides-session/99","answers":{}}', '"fivesides-session/99"'],
    ['of no format', '{"answers":{}}', 'it names no format'],
    ['that is half a file', '{"format":"fivesides-session/1","ans', 'it is no JSON'],
  ])('one %s is refused by name and left alone: 2, and the terminal is clean', async (_, text, words) => {
    for (const args of [['--resume'], []]) {
      const cwd = emptyFolder();
      writeFileSync(join(cwd, 'kept.json'), text);
      const terminal = start({ catalog, cwd, args });
      expect(await terminal.ended()).toEqual({ code: 2, signal: 0 });
      const said = terminal.lines().join('').replaceAll(/\s+/g, ' ');
      expect(said.replaceAll(' ', '')).toContain(join(cwd, 'kept.json'));
      expect(said).toContain(words);
      expect(said).toContain('It is left as it is');
      expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
      expect(readFileSync(join(cwd, 'kept.json'), 'utf8')).toBe(text);
    }
  });
});

test('the whole journey: killed in the middle, gone on with, to the papers', async () => {
  const terminal = await at('approaches');
  const again = await lastsAfter(terminal, keptBefore('approaches'), turnOf('approaches'));
  await answered(again, TURNS.slice(TURNS.indexOf(turnOf('approaches'))));
  await again.waitFor('every question is answered');
  again.send('t');
  await again.waitFor('The answer');
  await settled(again);
  await again.press('p');
  again.send('1\r');
  await again.waitFor('Where to?');
  again.send('why.md\r');
  await again.waitFor('in why.md.');
  again.send('q');
  expect((await again.ended()).code).toBe(4);
  expect(readFileSync(join(again.cwd, 'why.md'), 'utf8')).toMatch(/^# /);
  expect(savedBy(again).answers).toEqual(keptAfterEach(TURNS).at(-1));
});

test('the whole journey: back and changed, a jump, and the result of what was said last', async () => {
  const terminal = await at('approaches');
  const before = until(TURNS, 'approaches').at(-1)?.title ?? '';
  await terminal.press(KEY.left);
  await terminal.waitFor(before);
  for (const [where, title, keys] of [
    ['/hinge size\r', 'How large is Hinge?', '80 x 60 x 55\r'],
    ['/hinge material\r', 'What is Hinge made of?', '1\r'],
  ] as const) {
    terminal.send(where);
    await terminal.waitFor(title);
    terminal.send(keys);
    // back where it was jumped from
    await terminal.waitFor(before);
  }
  terminal.send('\r');
  await answered(terminal, TURNS.slice(TURNS.indexOf(turnOf('approaches'))));
  await terminal.waitFor('every question is answered');
  terminal.send('t');
  await terminal.waitFor('The answer');
  await settled(terminal);
  const { answers } = savedBy(terminal);
  const wanted = turnsOf({ ...HINGE, size: '80 x 60 x 55', material: '1' }, world);
  expect(answers).toEqual(keptAfterEach(wanted).at(-1));
  terminal.send('q');
  expect((await terminal.ended()).code).toBe(4);
});

test('requirement 18: an interview of another time is offered, and its first question is that of the file', async () => {
  const terminal = await at('own-mill');
  await killed(terminal);
  const again = start({ catalog, cwd: terminal.cwd });
  await again.waitFor('Go on with the saved interview');
  again.send(KEY.enter);
  await again.waitFor(question(2));
  expect(savedBy(again).answers).toEqual(keptBefore('own-mill'));
});
