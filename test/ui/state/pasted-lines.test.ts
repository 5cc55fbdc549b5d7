import { describe, expect, test } from 'vitest';
import { frame } from '../../../src/ui/frame/frame.ts';
import { beginning, type Ui } from '../../../src/ui/state/ui.ts';
import { begun, blockReplies, go, oneBlock, type Talk, WORLD } from '../../session/talk.ts';
import { goneTo } from '../every-screen.ts';
import { after as pressed, pressing } from '../pressing.ts';

const pasted = (text: string): string => `\u001b[200~${text}\u001b[201~`;
const TABLE = 'Name\tShape\tSize (mm)\r\nCleat\tblock\t90 x 60 x 55\r\nPintle\tcube\t40 x 40 x 120\r\n';
const uiOf = ({ session }: Talk): Ui => beginning(session, null);
const atParts = (): Ui => uiOf(go(begun(), 'mm', 'none', ...blockReplies('Hinge')));
const names = ({ session }: Ui) => WORLD.survey(session.kept).answers.parts.map(({ name }) => name);
const shown = (ui: Ui, columns = 80): string =>
  frame(
    ui,
    { columns, rows: 24 },
    { world: WORLD, ascii: false, color: false, sessionFile: 'session.json', unsaved: null },
  )
    .map(({ spans }) =>
      spans
        .map(({ text }) => text)
        .join('')
        .trimEnd(),
    )
    .join('\n');

describe('requirements 15 and 17: a table pasted on the list of parts', () => {
  test('is taken in at once, saved, and what is wrong stands over the list with its place', () => {
    const [ui, requests] = pressing(atParts(), WORLD, pasted(TABLE));
    expect(names(ui)).toEqual(['Hinge', 'Cleat', 'Pintle']);
    expect(requests).toEqual([{ kind: 'effect', effect: { kind: 'save' } }]);
    expect(ui.over).toEqual({ kind: 'lines' });
    expect(shown(ui)).toContain('2 parts are added: Cleat, Pintle.');
    expect(shown(ui)).toContain('Row 3 (Pintle), Shape: "cube" is none of them');
    const closed = pressed(ui, WORLD, '\r');
    expect(closed.over).toBeNull();
    expect(shown(closed)).toContain('2 parts are added');
  });

  test('without a fault it stays on the list', () => {
    const ui = pressed(atParts(), WORLD, pasted(TABLE.replace('cube', 'block')));
    expect([ui.over, ui.session.at]).toEqual([null, { at: 'parts' }]);
  });

  test('is one change, which one key takes back', () => {
    const ui = pressed(atParts(), WORLD, pasted(TABLE), '\r', 'u');
    expect(names(ui)).toEqual(['Hinge']);
    expect(ui.said).toBe('Cleat and Pintle are taken out again.');
  });

  test('is taken where the first part would be named', () => {
    const ui = pressed(uiOf(go(begun(), 'mm', 'none')), WORLD, pasted(TABLE));
    expect(names(ui)).toEqual(['Cleat', 'Pintle']);
  });

  test.each(['tolerance', 'material', 'name'])('answers no question: %s', (id) => {
    const ui = goneTo(uiOf(oneBlock()), { at: 'question', id, subject: 0 }, WORLD);
    const then = pressed(ui, WORLD, pasted(TABLE));
    expect([then.session.kept, then.session.at]).toEqual([ui.session.kept, ui.session.at]);
    expect(then.said).toContain('go to the list of parts');
  });

  test('several lines that are no table change nothing on the list, and the first is typed elsewhere', () => {
    const start = atParts();
    const ui = pressed(start, WORLD, pasted('hello\nworld'));
    expect(ui.session.kept).toBe(start.session.kept);
    expect(shown(ui)).toContain('That is no table of parts');
    const typing = goneTo(uiOf(oneBlock()), { at: 'question', id: 'tolerance', subject: 0 }, WORLD);
    expect(pressed(typing, WORLD, pasted('0,07 mm\n0,08 mm')).field.text).toBe('0,07 mm');
  });
});
