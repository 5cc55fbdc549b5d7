import { expect, test } from 'vitest';
import { CHECKS } from '../../../src/rules/checks/index.ts';
import { workedExample } from '../../../src/teaching/examples/worked-check.ts';
import { workOut } from '../../../src/teaching/formula/work-out.ts';
import { wouldBeRight } from '../../../src/teaching/lessons/would-be-right.ts';
import { expectClose } from '../../close-to.ts';

const WORKED = CHECKS.flatMap((check) =>
  check.examples.slice(0, 2).flatMap((example) => {
    const found = workedExample(check, example);
    return found === null ? [] : [[`${check.id}: ${example.what}`, found] as const];
  }),
);

test.each(WORKED)('what is told brings it there: %s', (_what, found) => {
  for (const share of [0.9, 1.1]) {
    const wanted = found.worked.need * share;
    const told = wouldBeRight(found, 'need', wanted);
    if (told === null) continue;
    const symbol = found.formula.symbols.find(({ words }) => words === told.words)?.symbol ?? '';
    const again = workOut(found.formula, { ...found.values, [symbol]: told.to });
    expectClose(again.need, wanted, { absolute: 1e-4 * Math.max(1, Math.abs(wanted)) });
  }
});

test('most can be told', () => {
  const told = WORKED.filter(([, found]) => wouldBeRight(found, 'need', found.worked.need * 1.1) !== null);
  expect(told.length).toBeGreaterThan(WORKED.length / 2);
});

test('the smallest change is told', () => {
  const [, swing] = WORKED.find(([name]) => name.startsWith('swing')) ?? WORKED[0] ?? [];
  if (swing === undefined) throw new Error('no example');
  expect(wouldBeRight(swing, 'need', 120)).toMatchObject({
    words: 'how far the part stands off the rotary axis',
    from: 0,
  });
});
