import { CONTROL } from './printable.ts';
import type { Problem, Reading } from './problem.ts';
import { wholeFile } from './problem.ts';

/** Largest file that is read, in bytes. */
export const LARGEST_FILE = 8 * 1024 * 1024;

/** Example: 8 388 608 → '8 MB'. */
export const inMegabytes = (bytes: number): string => `${+(bytes / 1024 / 1024).toFixed(1)} MB`;

/**
 * The bytes of a file as text: UTF-8, a byte order mark taken off. Refuses what is no text (zero and other control
 * bytes, UTF-16, broken UTF-8), with the place where that begins. `most`: the largest that is read, in bytes.
 */
export function decodeText(bytes: Uint8Array, file: string, most: number = LARGEST_FILE): Reading<string> {
  if (bytes.length > most) {
    const size = inMegabytes(most);
    return wholeFile(file, `the file is larger than ${size}`, `expected a file of at most ${size}`);
  }
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return wholeFile(file, 'the file is in UTF-16', 'expected UTF-8: save it as UTF-8 in your editor');
  }
  const text = decoded(bytes);
  if (text === null) return { ok: false, problems: [brokenUtf8(bytes, file)] };
  const control = CONTROL.exec(text);
  if (control === null) return { ok: true, value: text };
  const code = text.charCodeAt(control.index).toString(16).padStart(4, '0');
  const found = `the control character U+${code.toUpperCase()} stands here`;
  return {
    ok: false,
    problems: [
      {
        file,
        ...placeAtEnd(text.slice(0, control.index)),
        found,
        expected: 'expected text',
      },
    ],
  };
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** The longest beginning that is good UTF-8 ends where the broken byte stands. */
function brokenUtf8(bytes: Uint8Array, file: string): Problem {
  let good = 0;
  let bad = bytes.length;
  while (good < bad) {
    const middle = Math.ceil((good + bad) / 2);
    if (isGoodBeginning(bytes.subarray(0, middle))) good = middle;
    else bad = middle - 1;
  }
  const place = placeAtEnd(new TextDecoder().decode(bytes.subarray(0, good), { stream: true }));
  return {
    file,
    ...place,
    found: 'a byte that is not UTF-8 stands here',
    expected: 'expected a text file in UTF-8',
  };
}

function isGoodBeginning(bytes: Uint8Array): boolean {
  try {
    // as a stream, so that a character cut off at the end does not count as broken
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

function placeAtEnd(before: string): { line: number; column: number } {
  const lines = before.split('\n');
  return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 };
}
