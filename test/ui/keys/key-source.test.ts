import { EventEmitter } from 'node:events';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { keySource } from '../../../src/ui/keys/key-source.ts';

class FakeInput extends EventEmitter {
  resume(): this {
    return this;
  }
  pause(): this {
    return this;
  }
}

/** What comes out of a source, a word each. */
function listening() {
  const input = new FakeInput();
  const got: string[] = [];
  const source = keySource(input, (key) => {
    got.push(key.kind === 'named' ? `<${key.name}>` : key.kind === 'paste' ? `[${key.text}]` : key.text);
  });
  source.start();
  const send = (data: Buffer | string): void => void input.emit('data', data);
  return { input, source, got, send };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const RUN = 'ä軸😀\u001b[A\u001b[5~12.5\u001b[200~7 mm\r\n\u001b[201~\u001bOB\r';
const KEYS = ['ä', '軸', '😀', '<up>', '<page-up>', '1', '2', '.', '5', '[7 mm]', '<down>', '<enter>'];

describe('requirement 8: keys come whole, however the bytes are cut', () => {
  const bytes = Buffer.from(RUN);
  test('in one piece', () => {
    const { got, send } = listening();
    send(bytes);
    vi.runAllTimers();
    expect(got).toEqual(KEYS);
  });

  test('cut in two at every byte', () => {
    for (let at = 0; at <= bytes.length; at += 1) {
      const { got, send } = listening();
      send(bytes.subarray(0, at));
      send(bytes.subarray(at));
      vi.runAllTimers();
      expect([at, ...got]).toEqual([at, ...KEYS]);
    }
  });

  test('byte by byte', () => {
    const { got, send } = listening();
    for (const byte of bytes) send(Buffer.from([byte]));
    vi.runAllTimers();
    expect(got).toEqual(KEYS);
  });

  test('a line end that is cut in two is one Enter', () => {
    const { got, send } = listening();
    send('5');
    send('\r');
    send('\n6');
    send('\r');
    send('\n');
    vi.runAllTimers();
    expect(got).toEqual(['5', '<enter>', '6', '<enter>']);
  });
});

describe('requirement 9: several lines that come at once are a paste, marked or not', () => {
  const LINES = 'Name\tShape\r\nHinge\tblock\r\n';

  test('in one piece', () => {
    const { got, send } = listening();
    send(LINES);
    expect(got).toEqual([]);
    vi.runAllTimers();
    expect(got).toEqual(['[Name Shape]']);
  });

  test('cut in two at every byte of its later lines, the second part 25 ms after the first', () => {
    for (let at = LINES.indexOf('\r') + 1; at < LINES.length; at += 1) {
      const { got, send } = listening();
      send(LINES.slice(0, at));
      vi.advanceTimersByTime(25);
      send(LINES.slice(at));
      vi.runAllTimers();
      expect([at, ...got]).toEqual([at, '[Name Shape]']);
    }
  });

  test.each([
    ['a line with its end', '12,5 mm\r\n', [...'12,5 mm', '<enter>']],
    ['a line and empty ones', '40\r\n\r\n', ['4', '0', '<enter>', '<enter>']],
    ['a long line', 'Lock gate hinge, upper', [...'Lock gate hinge, upper']],
    ['keys between the lines', '1\r\u001b[B2\r', ['1', '<enter>', '<down>', '2', '<enter>']],
  ])('%s is typed', (_, text, keys) => {
    const { got, send } = listening();
    send(text);
    vi.runAllTimers();
    expect(got).toEqual(keys);
  });

  test('what a key cuts off is a paste still', () => {
    const { got, send } = listening();
    send('90\r60\r');
    send('\u0003');
    expect(got).toEqual(['[90]', '<ctrl-c>']);
  });

  test('one that is too long is refused as a whole', () => {
    const { input, source, send } = listening();
    source.stop();
    const keys: unknown[] = [];
    keySource(input, (key) => keys.push(key)).start();
    for (let each = 0; each < 60; each += 1) send('90\r60\r'.repeat(500));
    vi.runAllTimers();
    expect(keys).toEqual([{ kind: 'paste', text: '', tooLong: true }]);
  });

  test('a marked one whose end does not come has ended after a second', () => {
    const { got, send } = listening();
    send('\u001b[200~12,5 mm\r30');
    vi.advanceTimersByTime(900);
    expect(got).toEqual([]);
    vi.advanceTimersByTime(200);
    expect(got).toEqual(['[12,5 mm]']);
  });
});

describe('requirement 10: Escape', () => {
  test('and the rest of an arrow 30 ms later is the arrow', () => {
    const { got, send } = listening();
    send('\u001b');
    vi.advanceTimersByTime(30);
    send('[A');
    vi.runAllTimers();
    expect(got).toEqual(['<up>']);
  });

  test('alone acts within 100 ms', () => {
    const { got, send } = listening();
    send('\u001b');
    expect(got).toEqual([]);
    vi.advanceTimersByTime(100);
    expect(got).toEqual(['<escape>']);
  });

  test('then a letter after it has acted is both', () => {
    const { got, send } = listening();
    send('\u001b');
    vi.advanceTimersByTime(100);
    send('x');
    expect(got).toEqual(['<escape>', 'x']);
  });

  test('is not heard any more once the source is stopped', () => {
    const { got, send, source } = listening();
    send('\u001b');
    source.stop();
    vi.advanceTimersByTime(100);
    send('x');
    expect(got).toEqual([]);
  });
});
