import { describe, expect, test } from 'vitest';
import { readCommand } from '../../../src/commands/plain/command.ts';
import { explainLines } from '../../../src/commands/plain/print-explain.ts';
import { optionLines } from '../../../src/commands/plain/print-question.ts';
import { promptOf, screenLines } from '../../../src/commands/plain/print-screen.ts';
import { helpLines, whyLines } from '../../../src/commands/plain/print-why.ts';
import { asked, begun, go, oneBlock, screen, type Talk } from '../../session/talk.ts';

/** Every question there is, on the way through an interview that answers as little as it can. */
function everyScreen(): readonly Talk[] {
  const said: Readonly<Record<string, string>> = {
    approaches: '1, 2, 3, 4, 5',
    motion: 'simultaneous',
    cut: 'detailed',
    drill: 'yes',
    parts: 'go on',
  };
  const talks: Talk[] = [];
  let talk = begun();
  for (let turn = 0; turn < 100 && asked(talk) !== 'review'; turn += 1) {
    talks.push(talk);
    talk = go(talk, said[asked(talk)] ?? 'not sure');
  }
  return [...talks, talk, go(oneBlock(), '')];
}
const SCREENS = everyScreen();

test.each([20, 40, 60, 80, 120])(
  'no line of any screen is wider than %i columns, unless a word is',
  (width) => {
    for (const talk of SCREENS) {
      const now = screen(talk);
      for (const line of [
        ...screenLines(now, width),
        ...whyLines(now, width),
        ...helpLines(Math.max(width, 40)),
      ]) {
        const words = line.trim().split(/\s+/);
        expect(line.length <= Math.max(width, 40) || words.length <= 2, `${width}: ${line}`).toBe(true);
      }
    }
  },
);

test('every question fits on a screen of 80 x 24 together with what came before it', () => {
  for (const talk of SCREENS.filter((each) => screen(each).kind === 'question')) {
    expect(screenLines(screen(talk), 80).length, asked(talk)).toBeLessThanOrEqual(19);
  }
});

test('every prompt says what is asked', () => {
  for (const talk of SCREENS) expect(promptOf(screen(talk))).toMatch(/^\S.* > $/);
});

test('very many options are listed in a running text, and the rest is counted', () => {
  const options = Array.from({ length: 300 }, (_, index) => ({
    value: `m${index}`,
    label: `Machine${index}`,
    about: '',
  }));
  const lines = optionLines(options, 80);
  expect(lines.length).toBeLessThan(20);
  expect(lines.every((line) => /^ {2}\d+ M|^ {2}\w+ /.test(line) && !/\d$/.test(line))).toBe(true);
  expect(lines.map((line) => line.trim()).join(' ')).toContain('and 240 more: type the beginning of a name.');
});

describe('a typed line', () => {
  test.each([
    ['back', { type: 'back' }],
    ['BACK', { type: 'back' }],
    ['', { type: 'accept' }],
    ['goto 12', { type: 'find', text: '12' }],
    ['goto lowest cut', { type: 'find', text: 'lowest cut' }],
    ['save', { type: 'write', what: 'answers', file: null }],
    ['export a b.md', { type: 'write', what: 'report', file: 'a b.md' }],
    ['back to back', { type: 'reply', text: 'back to back' }],
    ['"back"', { type: 'reply', text: '"back"' }],
    ['constructor', { type: 'reply', text: 'constructor' }],
  ])('%j is understood', (line, event) => {
    expect(readCommand(line, false)).toEqual({ kind: 'events', events: [event] });
  });

  test('parts with a word does it at the list of parts', () => {
    expect(readCommand('parts copy 2', false)).toMatchObject({
      events: [
        { type: 'go', to: { at: 'parts' } },
        { type: 'reply', text: 'copy 2' },
      ],
    });
  });

  test('where free text is asked for only a word by itself is a command', () => {
    expect(readCommand('Save tray', true)).toMatchObject({ events: [{ type: 'reply', text: 'Save tray' }] });
    expect(readCommand('save', true)).toMatchObject({ events: [{ type: 'write' }] });
  });

  test.each([
    ['?', { kind: 'say', what: 'why' }],
    ['help', { kind: 'say', what: 'help' }],
    ['quit', { kind: 'quit' }],
  ])('%j is for the shell', (line, command) => expect(readCommand(line, false)).toEqual(command));
});

describe('more of the result, by name', () => {
  test.each([
    ['show', 'overview'],
    ['show money', 'money'],
    ['Show trade offs', 'trade-offs'],
    ['show ranges', 'ranges'],
    ['show KINDS', 'kinds'],
  ])('%s', (line, view) => {
    expect(readCommand(line, false)).toEqual({ kind: 'view', view });
  });

  test('what is no view is a reply, and so is free text', () => {
    const reply = (text: string) => ({ kind: 'events', events: [{ type: 'reply', text }] });
    expect(readCommand('show everything', false)).toEqual(reply('show everything'));
    expect(readCommand('show tray', true)).toEqual(reply('show tray'));
  });

  test.each([
    ['export', { what: 'report', file: null }],
    ['export mine.md', { what: 'report', file: 'mine.md' }],
    ['export mine.json', { what: 'decision', file: 'mine.json' }],
    ['export half-page', { what: 'half-page', file: null }],
    ['export site-sheet for the yard.md', { what: 'site-sheet', file: 'for the yard.md' }],
    ['export quote-sheets q.txt', { what: 'quote-sheets', file: 'q.txt' }],
  ])('%s', (line, written) => {
    expect(readCommand(line, false)).toEqual({ kind: 'events', events: [{ type: 'write', ...written }] });
  });
});

describe('explain', () => {
  const look = { width: 80, ascii: false };
  test('is a command, with a name or without', () => {
    expect(readCommand('explain reach high', false)).toEqual({ kind: 'explain', name: 'reach high' });
    expect(readCommand('explain', false)).toEqual({ kind: 'explain', name: '' });
  });

  test('a part may be called so', () => {
    expect(readCommand('explain tray', true)).toMatchObject({ kind: 'events' });
  });

  test('says what a name means, its picture in words', () => {
    const text = explainLines('swing', look, 'mm').join('\n');
    expect(text).toContain('THE WORK TURNS FREELY');
    expect(text).not.toMatch(/[\u2500-\u257f\u2800-\u28ff]/);
  });

  test('lists what there is, and names what was meant', () => {
    expect(explainLines('', look, 'mm').join(' ')).toContain('Checks: swing, faceplate');
    expect(explainLines('swign', look, 'mm').join(' ')).toContain('Did you mean swing?');
  });
});
