import { expect, test } from 'vitest';
import { formatOf } from '../../src/commands/format-of.ts';

test.each([
  [undefined, undefined, 'text'],
  [undefined, 'report.md', 'markdown'],
  [undefined, 'REPORT.MARKDOWN', 'markdown'],
  [undefined, 'decision.json', 'json'],
  [undefined, 'report.txt', 'text'],
  [undefined, 'report', 'text'],
  [undefined, '/dev/stdout', 'text'],
  ['text', 'report.md', 'text'],
  ['json', undefined, 'json'],
  ['markdown', 'decision.json', 'markdown'],
] as const)('asked for %s in %s: %s', (asked, out, format) => {
  expect(formatOf(asked, out)).toBe(format);
});
