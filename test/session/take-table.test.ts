import { describe, expect, test } from 'vitest';
import { answers, asked, begun, blockReplies, go, oneBlock, screen, type Talk } from './talk.ts';

const table = (text: string) => ({ type: 'table', text }) as const;
const names = (talk: Talk) => answers(talk).parts.map(({ name }) => name);
const linesOf = (talk: Talk) => screen(talk).more ?? [];

const TABLE = [
  'Name;Shape;Size (mm);Diameter;Length;Material;Sides that are cut;Pieces a year',
  'Lock gate hinge;block;90 x 60 x 55;;;brass;top, sides;400',
  'Valve body;round;;80;120;gray iron;around;250',
  'Cleat;block;120 x 40 x 30;;;wrought aluminum;top;1000',
].join('\n');

const atParts = (): Talk => go(begun(), 'mm', 'none', ...blockReplies('Rudder pintle'));

describe('requirement 15: a table of parts', () => {
  test('adds its parts behind those that are there, and asks for them to be saved', () => {
    const talk = go({ ...atParts(), effects: [] }, table(TABLE));
    expect(names(talk)).toEqual(['Rudder pintle', 'Lock gate hinge', 'Valve body', 'Cleat']);
    expect(asked(talk)).toBe('parts');
    expect(talk.effects).toEqual([{ kind: 'save' }]);
    expect(screen(talk).said).toBe(
      '3 parts are added: Lock gate hinge, Valve body, Cleat. Every cell is taken.',
    );
    expect(linesOf(talk)).toEqual([]);
    expect(answers(talk).parts[2]).toMatchObject({
      shape: 'round',
      diameter: 80,
      length: 120,
      material: 'iron-gray',
    });
  });

  test('is taken where the first part would be named, and the interview goes on from the list', () => {
    const talk = go(begun(), 'mm', 'none', table(TABLE));
    expect(names(talk)).toEqual(['Lock gate hinge', 'Valve body', 'Cleat']);
    expect(asked(talk)).toBe('parts');
    const next = go(talk, 'go on');
    expect([asked(next), next.session.at]).toEqual(['mass', { at: 'question', id: 'mass', subject: 0 }]);
  });

  test('before anything is answered it says in which units numbers are read', () => {
    const talk = go(begun(), table(TABLE));
    expect(screen(talk).said).toContain('Numbers without a unit are read in millimeters and kilograms.');
    expect(asked(go(talk, 'go on'))).toBe('units');
  });

  test('taken in later it leads back to where it was', () => {
    const there = go(atParts(), 'go on', '90');
    const talk = go(there, table(TABLE), 'go on');
    expect(asked(talk)).toBe(asked(there));
  });

  test('wrong cells are left open and listed with place and remedy, and the others are taken', () => {
    const wrong = TABLE.replace('gray iron', 'cheese').replace('120 x 40 x 30', '120 x 40');
    const talk = go(atParts(), table(wrong));
    expect(names(talk)).toHaveLength(4);
    expect(linesOf(talk)).toHaveLength(2);
    expect(linesOf(talk)[0]).toMatch(
      /^Row 3 \(Valve body\), Material: "cheese" is none of them: carbon steel, alloy steel, .*plastic, or "not sure"/,
    );
    expect(linesOf(talk)[1]).toMatch(
      /^Row 4 \(Cleat\), Size \(mm\): That is 2 numbers: type length x width x height/,
    );
    expect(talk.session.kept.parts[2]?.material).toBeUndefined();
    expect(talk.session.kept.parts[2]?.diameter).toEqual({ from: 'typed', value: 80 });
    expect(talk.session.kept.parts[3]).not.toHaveProperty('size');
  });

  test('a name that is there already is refused by name, and nothing is overwritten', () => {
    const before = atParts();
    const talk = go(before, table('Name;Material\nrudder PINTLE;brass\nCleat;brass\ncleat;titanium'));
    expect(names(talk)).toEqual(['Rudder pintle', 'Cleat']);
    expect(talk.session.kept.parts[0]).toBe(before.session.kept.parts[0]);
    expect(linesOf(talk)).toEqual([
      'Row 2 (rudder PINTLE), Name: There is a part called "Rudder pintle" already: this row is not taken. Give it another name.',
      'Row 4 (cleat), Name: There is a part called "Cleat" already: this row is not taken. Give it another name.',
    ]);
  });

  test('what cannot stand beside the other answers is left open; what is not asked is kept and told', () => {
    const text =
      'Name;Shape;Length;Heaviest cut;Cutter diameter;Width of cut\nCleat;block;90;detailed;20;30\nShaft;round;90;heavy;;';
    const talk = go(atParts(), table(text));
    expect(linesOf(talk).map((line) => line.slice(0, 29))).toEqual([
      'Row 2 (Cleat), Length: That i',
      'Row 2 (Cleat), Width of cut: ',
    ]);
    expect(talk.session.kept.parts[1]).not.toHaveProperty('cut-width');
    expect(talk.session.kept.parts[1]?.length).toEqual({ from: 'typed', value: 90 });
  });

  test.each([
    ['no table', 'hello\nworld', /^That is no table of parts: its first row has to name questions/],
    [
      'nothing but known names',
      'Name\nRudder pintle',
      /^No part of the table is taken\. Row 2 \(Rudder pintle\), Name: There is a part/,
    ],
    ['headings alone', 'Name;Mass', /^No part of the table is taken\. It has no row/],
  ])('%s changes nothing', (_, text, words) => {
    const before = atParts();
    const talk = go(before, table(text));
    expect(talk.session.kept).toBe(before.session.kept);
    expect(screen(talk).error?.why).toMatch(words);
  });

  test('is not taken in while other answers are tried', () => {
    const tried = go(oneBlock(), '', { type: 'try-find', text: 'budget' }, '150000');
    const talk = go(tried, table(TABLE));
    expect(screen(talk).error?.why).toContain('keep or drop them');
  });

  test('holds no more parts than an answers file', () => {
    const rows = Array.from({ length: 210 }, (_, index) => `Cleat ${index}`);
    const talk = go(atParts(), table(['Name', ...rows].join('\n')));
    expect(names(talk)).toHaveLength(200);
    expect(linesOf(talk)).toHaveLength(11);
  });
});

test('a file is read by the shell, and what became of it is told', () => {
  const talk = go({ ...atParts(), effects: [] }, { type: 'read-table', file: 'parts.csv' });
  expect(talk.effects).toEqual([{ kind: 'read', file: 'parts.csv' }]);
  const failed = go(talk, { type: 'not-read', file: 'parts.csv', why: 'there is no such file' });
  expect(screen(failed).error?.why).toBe('The table in parts.csv is not read: there is no such file.');
});
