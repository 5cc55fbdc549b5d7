import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Key } from '../../../src/ui/keys/key.ts';
import { readKeys } from '../../../src/ui/keys/read-keys.ts';

/** Keys in short: names in angle brackets, pastes in square ones. */
const short = (keys: readonly Key[]): readonly string[] =>
  keys.map((key) =>
    key.kind === 'named' ? `<${key.name}>` : key.kind === 'paste' ? `[${key.text}]` : key.text,
  );
const keysOf = (text: string): readonly string[] => short(readKeys(text, true).keys);

const DOWN = '\u001b[B';
const BEGIN = '\u001b[200~';
const END = '\u001b[201~';

describe('requirement 8: no key of a run is lost', () => {
  test.each([
    ['five arrows', DOWN.repeat(5), ['<down>', '<down>', '<down>', '<down>', '<down>']],
    ['arrows and Enter', `${DOWN}${DOWN}\r`, ['<down>', '<down>', '<enter>']],
    ['a number and Enter', '12.5\r', ['1', '2', '.', '5', '<enter>']],
    ['typed and taken back', '123\u007f\u007f', ['1', '2', '3', '<backspace>', '<backspace>']],
    ['both kinds of backspace', '1\u0008\u007f', ['1', '<backspace>', '<backspace>']],
    ['control keys', '\u000e\u0019\u0003', ['<ctrl-n>', '<ctrl-y>', '<ctrl-c>']],
    ['arrows of the application mode', '\u001bOA\u001bOD', ['<up>', '<left>']],
    ['held modifiers', '\u001b[1;5C\u001b[1;2H', ['<right>', '<home>']],
    [
      'pages and ends',
      '\u001b[5~\u001b[6~\u001b[7~\u001b[4~\u001b[3~',
      ['<page-up>', '<page-down>', '<home>', '<end>', '<delete>'],
    ],
    ['Shift-Tab and Tab', '\u001b[Z\t', ['<shift-tab>', '<tab>']],
    ['Enter in its three ways', '\r\n\n\r', ['<enter>', '<enter>', '<enter>']],
    ['a letter of two code points', 'e\u0301x', ['e\u0301', 'x']],
    ['wide letters and a picture', '軸😀', ['軸', '😀']],
  ])('%s', (_, text, keys) => {
    expect(keysOf(text)).toEqual(keys);
  });

  test('keys that nothing is bound to, the mouse and the focus are no text', () => {
    expect(keysOf('\u001b[15~\u001b[M !!\u001b[<0;3;4M\u001b[I\u001b[O\u001bOPx')).toEqual(['x']);
  });

  test('a run read in pieces gives the keys that it gives at once, wherever it is cut', () => {
    const piece = fc.constantFrom(
      DOWN,
      '\u001b[5~',
      '\u001bOA',
      '1',
      '.',
      'x',
      '軸',
      '\r',
      '\u007f',
      '\t',
      '\u0012',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), fc.nat(), (pieces, cutAt) => {
        const text = pieces.join('');
        const at = text.length === 0 ? 0 : cutAt % (text.length + 1);
        const first = readKeys(text.slice(0, at), false);
        const second = readKeys(first.rest + text.slice(at), true);
        expect(short([...first.keys, ...second.keys])).toEqual(keysOf(text));
      }),
    );
  });

  test('nothing that comes from a terminal throws, hangs or leaves anything once it is flushed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(readKeys(text, true).rest).toBe('');
      }),
    );
  });
});

describe('requirement 9: a paste is one text, and nothing in it steers the screen', () => {
  test('a bracketed paste is cleaned, and its line end answers nothing', () => {
    expect(keysOf(`${BEGIN}12,5 mm\r\n${END}`)).toEqual(['[12,5 mm]']);
    expect(keysOf(`${BEGIN}\n\n  two \nthree${END}`)).toEqual(['[two]']);
    expect(keysOf(`a${BEGIN}b${END}\r`)).toEqual(['a', '[b]', '<enter>']);
  });

  test('what is pasted without brackets is typed, and ends with one Enter', () => {
    expect(keysOf('12,5 mm\r\n')).toEqual(['1', '2', ',', '5', ' ', 'm', 'm', '<enter>']);
  });

  test.each([
    ['a color', '\u001b[31mred\u001b[0m', '[red]'],
    ['a title', '\u001b]0;title\u0007name', '[name]'],
    ['a bell, a zero, a tab', 'a\u0007\u0000\tb', '[a b]'],
    ['writing turned around', 'a\u202eb', '[ab]'],
    ['nothing at all', '\r\n\r\n', '[]'],
  ])('%s', (_, text, pastedAs) => {
    expect(keysOf(`${BEGIN}${text}${END}`)).toEqual([pastedAs]);
  });

  test('whatever is pasted or typed, no key holds a control character or an escape', () => {
    const nasty = fc.string({ unit: 'binary', maxLength: 80 });
    fc.assert(
      fc.property(nasty, fc.boolean(), (text, brackets) => {
        const { keys } = readKeys(brackets ? `${BEGIN}${text}${END}` : text, true);
        for (const key of keys)
          if (key.kind !== 'named') expect(key.text).not.toMatch(/[\p{Cc}\p{Bidi_Control}]/u);
      }),
    );
  });

  test('a paste whose end does not come has ended where nothing more is waited for', () => {
    expect(readKeys(`${BEGIN}abc`, false)).toEqual({ keys: [], rest: `${BEGIN}abc` });
    expect(keysOf(`${BEGIN}abc`)).toEqual(['[abc]']);
  });

  test('one that is too long is refused as a whole, and what comes after its end is not', () => {
    const { keys } = readKeys(`${BEGIN}${'9\r'.repeat(60_000)}${END}1`, true);
    expect(keys).toEqual([
      { kind: 'paste', text: '', tooLong: true },
      { kind: 'text', text: '1' },
    ]);
    const most = readKeys(`${BEGIN}${'9'.repeat(100_000)}${END}`, true).keys;
    expect(most).toEqual([{ kind: 'paste', text: '9'.repeat(100_000) }]);
  });

  test('of one that is too long not more is kept than shows that, wherever it is cut', () => {
    const text = `${BEGIN}${'9'.repeat(250_000)}${END}1`;
    for (const size of [4095, 99_991, 250_003, 250_009]) {
      const keys: Key[] = [];
      let rest = '';
      for (let at = 0; at < text.length; at += size) {
        const read = readKeys(rest + text.slice(at, at + size), false);
        keys.push(...read.keys);
        rest = read.rest;
        expect(rest.length).toBeLessThan(100_100);
      }
      expect([rest, ...keys]).toEqual([
        '',
        { kind: 'paste', text: '', tooLong: true },
        { kind: 'text', text: '1' },
      ]);
    }
  });
});
