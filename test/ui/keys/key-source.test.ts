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
  const source = keySource(input, (key) => void got.push(key.kind === 'named' ? `<${key.name}>` : key.text));
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
const KEYS = ['ä', '軸', '😀', '<up>', '<page-up>', '1', '2', '.', '5', '7 mm', '<down>', '<enter>'];

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
    send('5\r');
    send('\n6\r\n');
    vi.runAllTimers();
    expect(got).toEqual(['5', '<enter>', '6', '<enter>']);
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
