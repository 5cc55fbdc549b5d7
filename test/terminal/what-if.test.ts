import { expect, test } from 'vitest';
import { KEY } from './harness.ts';
import { answered, begun, HINGE, savedBy, settled, smallCatalog, turnsOf, undecided } from './interview.ts';

const catalog = smallCatalog();
const TURNS = turnsOf({ ...HINGE, budget: '200000' }, undecided(catalog));

test.each([
  [60, 20],
  [80, 24],
])('another budget is tried, named, looked at and kept at %i x %i', async (columns, rows) => {
  const terminal = await begun({ catalog, columns, rows });
  await answered(terminal, TURNS);
  await terminal.waitFor('Review');
  await terminal.press('t');
  await terminal.waitFor('i what if');
  await settled(terminal);
  await terminal.press('i');
  await terminal.waitFor('which answer?');
  await terminal.press(...'budget', KEY.enter);
  await terminal.waitFor('How much may all of it cost');
  await terminal.press(...'1000', KEY.enter);
  await terminal.waitFor('What if: this is tried');
  const tried = await settled(terminal);
  expect(tried).toContain('Budget: 1000 EUR instead of 200 000 EUR');
  await terminal.press('n');
  await terminal.waitFor('a name for it');
  await terminal.press(...'Tiny', KEY.enter);
  await terminal.waitFor('Present answers');
  expect(savedBy(terminal).answers.shop.budget).toEqual({ from: 'typed', value: 200_000 });
  await terminal.press('1');
  await terminal.waitFor('What if: Tiny');
  await terminal.press('k');
  await terminal.waitFor('Kept:');
  expect(savedBy(terminal).answers.shop.budget).toEqual({ from: 'typed', value: 1000 });
});
