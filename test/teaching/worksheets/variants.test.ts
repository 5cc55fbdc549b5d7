import { describe, expect, test } from 'vitest';
import { worksheetMarkdown } from '../../../src/teaching/worksheets/exports.ts';
import { sheetOf } from '../../../src/teaching/worksheets/sheet.ts';
import { variantOf } from '../../../src/teaching/worksheets/variant.ts';
import { demoCatalog } from '../../catalog-demo/demo.ts';
import { demoLesson, LESSON_NAMES } from '../lessons/lesson-fixture.ts';
import { leaksOf } from './leaks.ts';
import { readSheet } from './read-sheet.ts';
import { isRight, solved } from './solve-sheet.ts';

const made = (name: string, seed: number) => {
  const ready = variantOf(demoLesson(name), demoCatalog(), seed);
  if (ready === null) throw new Error(`no variant of ${name} for ${seed}`);
  return ready;
};

describe.each(LESSON_NAMES)('%s', (name) => {
  test.each([1, 2])(
    'variant %i is solved from its sheet alone, which tells nothing that is asked for',
    (seed) => {
      const ready = made(name, seed);
      const sheet = sheetOf(ready, { name, seed, units: seed === 1 ? 'mm' : 'inch' });
      const markdown = worksheetMarkdown(sheet, 'figures');
      const read = readSheet(markdown);
      expect(markdown).toContain(`Sheet \`${name}\`, variant ${seed}.`);
      for (const [index, step] of read.steps.entries()) {
        const own = solved(step, read);
        if (own !== null) expect(own).toSatisfy((text: string) => isRight(ready, index, text));
      }
      expect(leaksOf(sheet, markdown)).toEqual([]);
    },
  );
});

test('a seed gives the same numbers again, another one others', () => {
  const sizes = [7, 7, 8].map((seed) => made('part-size', seed).lesson.answers.parts.map(({ size }) => size));
  expect(sizes[0]).toEqual(sizes[1]);
  expect(sizes[0]).not.toEqual(sizes[2]);
});

test('numbers move by up to 15 percent in round steps; what a question names stays', () => {
  const { answers } = demoLesson('part-size');
  for (let seed = 1; seed <= 5; seed += 1) {
    const { lesson } = made('part-size', seed);
    const [cleat, fairlead] = lesson.answers.parts;
    const before = answers.parts[0]?.size ?? [];
    for (const [index, value] of (cleat?.size ?? []).entries()) {
      const was = Number(before[index]);
      expect(Math.abs(Number(value) - was)).toBeLessThanOrEqual(was * 0.15 + was / 40);
      expect(Number(value) % (was >= 100 ? 5 : 2)).toBe(0);
    }
    // the second step asks about a part of 120 by 90 mm, 20 mm off the axis
    expect([fairlead?.size.slice(0, 2), fairlead?.eccentricity]).toEqual([[120, 90], 20]);
  }
});
