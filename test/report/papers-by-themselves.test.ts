import { describe, expect, test } from 'vitest';
import { paperInFile } from '../../src/report/index.ts';
import { TEXT_VIEWS } from '../../src/report/screen-lines.ts';
import { demoDecisions } from './demo-decisions.ts';

describe.each(demoDecisions())('of %s', (_shop, decision) => {
  test('each paper is its part of the whole report, under the same title', () => {
    const half = paperInFile(decision, 'half-page', 'half.md');
    expect(half).toMatch(/^# Five-axis arrangement: a decision with its numbers\n\n## In half a page\n/);
    expect(half.match(/^## /gm)).toHaveLength(1);
    expect(paperInFile(decision, 'site-sheet', 'site.md')).toMatch(
      /^## Site sheet: what to measure, and whom to ask$/m,
    );
  });

  test('a name that ends in .txt gets lines of 80 columns without marks', () => {
    const text = paperInFile(decision, 'half-page', 'Half.TXT');
    expect(text).toContain('IN HALF A PAGE\n');
    expect(text).not.toMatch(/[#*]{2}/);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test.each(Object.entries(TEXT_VIEWS))('the view %s says something in 60 columns', (_name, lines) => {
    const said = lines(decision, { width: 60, ascii: true });
    expect(said.join('').length).toBeGreaterThan(20);
    // long names alone may stand out
    expect(said.filter((line) => line.length > 60 && line.includes(' '))).toEqual([]);
  });
});
