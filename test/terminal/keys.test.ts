import { describe, expect, test } from 'vitest';
import { KEY, pasted, type Terminal } from './harness.ts';
import {
  answered,
  begun,
  HINGE,
  question,
  savedBy,
  smallCatalog,
  turnsOf,
  undecided,
  until,
} from './interview.ts';

const catalog = smallCatalog();
const ROUND = turnsOf({ ...HINGE, shape: '2', diameter: '80' }, undecided(catalog));
const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** At the question for a number, before anything is judged. */
async function atDiameter(): Promise<Terminal> {
  const terminal = await begun({ catalog });
  await answered(terminal, until(ROUND, 'diameter'));
  await terminal.waitFor('Diameter (mm) ❯');
  return terminal;
}

const withoutPath = (terminal: Terminal): string => terminal.text().replaceAll(terminal.cwd, '');

test('requirement 8: keys that come in one write are the same as one after the other', async () => {
  const bursts: readonly (readonly string[])[] = [
    ['\r'],
    Array.from({ length: 5 }, () => KEY.down),
    [KEY.down, KEY.down, KEY.up, '\r'],
    [...'Lock gate hinge', '\r'],
    [KEY.down, '\r'],
    [...'123', KEY.backspace, KEY.backspace],
    [...'2.5', '\r'],
    [...'0123456789'.repeat(3)],
  ];
  const [single, burst] = await Promise.all([begun({ catalog }), begun({ catalog })]);
  for (const keys of bursts) {
    await single.press(...keys);
    burst.send(keys.join(''));
    await burst.waitFor((text) => text.replaceAll(burst.cwd, '') === withoutPath(single));
  }
  expect(savedBy(burst)).toEqual(savedBy(single));
  const [part] = savedBy(burst).answers.parts;
  expect(part).toMatchObject({ name: { value: 'Lock gate hinge' }, diameter: { value: 12.5 } });
  expect(burst.text()).toContain('❯ 012345678901234567890123456789');
});

test('requirement 8: thirty keys a hundredth of a second apart are all there', async () => {
  const terminal = await atDiameter();
  for (const digit of '123456789012345678901234567890') {
    terminal.send(digit);
    await pause(10);
  }
  await terminal.waitFor('❯ 123456789012345678901234567890');
});

describe('requirement 9: what is pasted', () => {
  test('as a paste, the first line is typed and nothing is answered yet', async () => {
    const terminal = await atDiameter();
    await terminal.press(pasted('12,5 mm\r\n30\r\n40\r\n'));
    await terminal.waitFor('Diameter (mm) ❯ 12,5 mm');
    expect(savedBy(terminal).answers.parts[0]).not.toHaveProperty('diameter');
    terminal.send('\r');
    await terminal.waitFor('Length (mm) ❯');
    expect(savedBy(terminal).answers.parts[0]).toMatchObject({ diameter: { from: 'typed', value: 12.5 } });
    expect(savedBy(terminal).answers.parts[0]).not.toHaveProperty('length');
  });

  test('as keys, its end is one Enter and answers one question', async () => {
    const terminal = await atDiameter();
    terminal.send('12,5 mm\r\n');
    await terminal.waitFor('Length (mm) ❯');
    await terminal.quiet(200);
    expect(savedBy(terminal).answers.parts[0]).toMatchObject({ diameter: { from: 'typed', value: 12.5 } });
    expect(terminal.text()).toContain('Length (mm) ❯');
  });

  test('as keys, of several lines the first is typed and nothing is answered', async () => {
    const terminal = await atDiameter();
    const before = savedBy(terminal);
    terminal.send('12,5 mm\r\n30\r\n40\r\n');
    await terminal.waitFor('Diameter (mm) ❯ 12,5 mm');
    await terminal.waitFor('the first is typed here, the others are left out');
    await terminal.quiet(200);
    expect(savedBy(terminal)).toEqual(before);
    terminal.send('\r');
    await terminal.waitFor('Length (mm) ❯');
    expect(savedBy(terminal).answers.parts[0]).toMatchObject({ diameter: { from: 'typed', value: 12.5 } });
  });

  test('as keys, a table of parts is taken in where the first part would be named, however it is cut', async () => {
    const terminal = await begun({ catalog });
    await answered(terminal, until(ROUND, 'name'));
    await terminal.waitFor('name');
    const rows = Array.from({ length: 30 }, (_, row) => `Cleat ${row}\tblock\t90 x 60 x 5${row % 10}\tbrass`);
    terminal.send(['Name\tShape\tSize (mm)\tMaterial', ...rows].join('\r'));
    await terminal.waitFor('30 parts are added: Cleat 0');
    expect(savedBy(terminal).answers.parts).toHaveLength(30);
  });

  test.each([
    ['as a paste', pasted],
    ['as keys', (text: string) => text],
  ])('%s, far too much is refused in words, and the next key works', async (_, sent) => {
    const terminal = await atDiameter();
    const before = savedBy(terminal);
    terminal.send(sent('12,5 mm\r'.repeat(30_000)));
    await terminal.waitFor('longer than 100 000 characters: nothing of it is taken');
    await terminal.quiet(300);
    expect(savedBy(terminal)).toEqual(before);
    await terminal.press('4', '2');
    await terminal.waitFor('Diameter (mm) ❯ 42');
  });

  test('what steers a display comes neither into the answer nor onto the screen', async () => {
    const terminal = await atDiameter();
    await terminal.press(
      pasted('1\u001b[31m2\u0007,\u0000\u001b]0;title\u00075\u009b2J \u202emm\u001b[2J\n'),
    );
    await terminal.waitFor('Diameter (mm) ❯ 12,52J mm');
    terminal.send(KEY.ctrlU);
    await terminal.waitFor(/Diameter \(mm\) ❯ *$/m);
    await terminal.press(pasted('\u001b[1;1H\u001b[41m12,5 mm\u001b[0m'));
    await terminal.waitFor('Diameter (mm) ❯ 12,5 mm');
    expect(terminal.raw).not.toContain('\u001b[41m');
    expect(terminal.raw).not.toContain('\u001b]0;title');
    expect(terminal.screen()[0]).toMatch(/question 5 of/);
  });
});

describe('requirement 10: Escape', () => {
  test('the two halves of an arrow key that come apart are that key', async () => {
    const terminal = await begun({ catalog });
    await terminal.press('\r');
    await terminal.waitFor('❯ none');
    for (const next of ['Sallow', 'Osier']) {
      terminal.send(KEY.escape);
      await pause(15);
      terminal.send('[B');
      await terminal.waitFor(`❯ ${next}`);
      expect(terminal.screen()[0]).toContain('question 2');
    }
  });

  test('alone it acts without another key, and throws no answer away', async () => {
    const terminal = await atDiameter();
    const before = savedBy(terminal);
    await terminal.press('55');
    await terminal.waitFor('❯ 55');
    terminal.send(KEY.escape);
    await terminal.waitFor(/Diameter \(mm\) ❯ *$/m);
    for (const number of [4, 3, 2, 1]) {
      terminal.send(KEY.escape);
      await terminal.waitFor(question(number));
    }
    terminal.send(KEY.escape);
    await terminal.waitFor('This is the first question.');
    expect(savedBy(terminal)).toEqual(before);
  });
});
