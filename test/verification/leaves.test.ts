import { describe, expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import { jsonReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import { verify } from '../../src/verification/verify.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';
import { NUMBER, nudged } from './nudged.ts';

const CATALOG = demoCatalog();

function differencesIn(text: string): readonly unknown[] {
  const reading = verify(text, 'f');
  if (!reading.ok) throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value.differences;
}

describe('a number of a decision that recommends something, off by one in its last digit, is found by verify', () => {
  const { answers, shownIn } = demoAnswers('shop-hand-lifting');
  const small = {
    ...CATALOG,
    rotaries: CATALOG.rotaries.filter(({ id }) => ['plover', 'whinchat'].includes(id)),
    machines: CATALOG.machines.filter(({ id }) => id === 'medlar'),
  };
  const recommended = decide(answers, small, { shownIn, flips: [], ranges: true, also: [] });
  const text = jsonReport(recommended);
  const leaves = [...text.matchAll(NUMBER)].filter(
    ({ 0: token, index }) => !token.startsWith('"') && index > text.indexOf('\n  },\n  "outcome"'),
  );
  const ofRanges = leaves.filter(
    ({ index }) => index > text.indexOf('\n  "stability"') && index < text.indexOf('\n  "unknowns"'),
  );

  test('it carries ranges, and comes out the same', () => {
    expect(recommended.recommended).not.toBeNull();
    expect(ofRanges.length).toBeGreaterThan(50);
    expect(differencesIn(text)).toEqual([]);
  });

  const everyNth = (all: typeof leaves, count: number) =>
    all.filter((_, index) => index % Math.ceil(all.length / count) === 1);

  test.each([...everyNth(leaves, 8), ...everyNth(ofRanges, 3)].map(({ index, 0: token }) => [index, token]))(
    'at %i, %s is found to be off',
    (at, token) => {
      const changed = nudged(text, at, token);
      expect(differencesIn(changed)).toHaveLength(1);
    },
  );
});
