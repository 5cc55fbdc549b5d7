import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { expectClose } from '../close-to.ts';
import { formulasOf, LINES, mechanicsFiles } from './formula-docs.ts';

/** Examples are printed with 11 or 12 digits, so that a billionth is left for rounding. */
const ROUNDING = { percent: 1e-7 };

/** Lists that only name what a table has; the table beside them carries the lines. */
const NAMES_ONLY = ['MATERIAL_IDS'];

function expectSame(actual: unknown, expected: unknown, where: string): void {
  if (typeof actual === 'number' && typeof expected === 'number') {
    if (Number.isNaN(expected)) expect(actual, where).toBeNaN();
    else expectClose(actual, expected, ROUNDING);
  } else if (
    typeof actual === 'object' &&
    actual !== null &&
    typeof expected === 'object' &&
    expected !== null
  ) {
    expect(Object.keys(actual).sort(), where).toEqual(Object.keys(expected).sort());
    for (const [key, value] of Object.entries(expected)) {
      expectSame((actual as Record<string, unknown>)[key], value, `${where}.${key}`);
    }
  } else {
    expect(actual, where).toEqual(expected);
  }
}

describe.each(mechanicsFiles())('%s', (file) => {
  const formulas = formulasOf(file).filter(({ name }) => !NAMES_ONLY.includes(name));

  it('holds a formula, a table, or types alone', () => {
    const hasTypesAlone = !/^export (?!type |interface )/m.test(readFileSync(file, 'utf8'));
    expect(formulas.length > 0 || hasTypesAlone).toBe(true);
  });

  it.each(formulas)('$name says its formula, symbols, range, source and an example', ({ lines }) => {
    for (const line of LINES) expect(lines[line], line).not.toEqual([]);
  });

  it.each(formulas)('$name gives what its examples say', async ({ name, lines }) => {
    const room = (await import(resolve(file))) as Record<string, unknown>;
    for (const example of lines.Example) {
      const [call, value, ...rest] = example.split(' → ');
      expect(rest, example).toEqual([]);
      expect(call, example).toContain(name);
      const evaluate = (text: string): unknown =>
        new Function(...Object.keys(room), `return (${text});`)(...Object.values(room));
      expectSame(evaluate(call ?? ''), evaluate(value ?? ''), example);
    }
  });
});
