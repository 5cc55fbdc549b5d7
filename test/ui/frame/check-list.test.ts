import { expect, test } from 'vitest';
import type { Part } from '../../../src/questions/answers.ts';
import { decide } from '../../../src/rules/decide.ts';
import { checkListRows } from '../../../src/ui/frame/check-list.ts';
import { textOfRow } from '../../../src/ui/look/row.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_PART } from '../../rules/example-shop.ts';

function said(part: Partial<Part>) {
  const answers = { ...EXAMPLE_ANSWERS, parts: [{ ...EXAMPLE_PART, tolerance: 0.5, ...part }] };
  const decision = decide(answers, EXAMPLE_CATALOG, { traces: true });
  const text = checkListRows(decision, 200, false).map(textOfRow).join(' ');
  return { outcome: decision.outcome, text };
}

test('the checks of what is recommended stand under no other words', () => {
  const { outcome, text } = said({});
  expect(outcome).toBe('recommended');
  expect(text).not.toContain('Nothing is recommended');
});

test('where it is open, they are those of one that may still win, and are said to be', () => {
  const { outcome, text } = said({ holding: { ...EXAMPLE_PART.holding, height: 'unknown' } });
  expect(outcome).toBe('open');
  expect(text).toContain('Nothing is recommended yet. This is the first of those that may still win');
});

test('where nothing passes, they are those of the nearest miss, and are said to be', () => {
  const { outcome, text } = said({ size: [300, 250, 90] });
  expect(outcome).toBe('none');
  expect(text).toContain('because nothing passes. This is what came nearest');
});
