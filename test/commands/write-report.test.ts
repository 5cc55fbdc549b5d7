import { existsSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM } from 'jsdom';
import { expect, test } from 'vitest';
import { writeReport } from '../../src/commands/write-report.ts';
import { markdownReport } from '../../src/report/index.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { paperFigures } from '../../src/verification/paper-figures.ts';
import { paperNodes } from '../../src/verification/paper-nodes.ts';
import { verify } from '../../src/verification/verify.ts';
import { demoDecisions } from '../report/demo-decisions.ts';
import { folderWith } from '../temporary-folder.ts';

const SHOP = new Map(demoDecisions()).get('shop') as Decision;

test('A report shows every figure that is written beside it, with words that say the same', () => {
  const folder = folderWith({});
  const { writing, figures } = writeReport(join(folder, 'my report.md'), SHOP, markdownReport, false);
  expect(writing).toEqual({ ok: true });
  expect(figures).toBe('my report-figures');
  const text = readFileSync(join(folder, 'my report.md'), 'utf8');
  const files = readdirSync(join(folder, 'my report-figures')).toSorted();
  const shown = [...text.matchAll(/!\[([^\]]+)\]\(<my report-figures\/([\w-]+\.svg)>\)/g)];
  expect(files.length).toBeGreaterThanOrEqual(2);
  expect(shown.map(([, , file]) => file).toSorted()).toEqual(files);
  const { window } = new JSDOM('');
  for (const [, alt, file] of shown) {
    const svg = readFileSync(join(folder, 'my report-figures', String(file)), 'utf8');
    const document = new window.DOMParser().parseFromString(svg, 'image/svg+xml');
    // Markdown writes some signs with a stroke before them
    expect(document.querySelector('desc')?.textContent).toBe(alt?.replace(/\\(?=[~*_])/g, ''));
  }
  expect(paperFigures(paperNodes(text))).toBe('my report-figures');
});

test('A report whose name has brackets has its figures beside it too, where it looks for them', () => {
  const folder = folderWith({});
  const { figures } = writeReport(join(folder, 'report (1).md'), SHOP, markdownReport, false);
  expect(figures).toBe('report (1)-figures');
  const text = readFileSync(join(folder, 'report (1).md'), 'utf8');
  expect(paperFigures(paperNodes(text))).toBe('report (1)-figures');
  expect(readdirSync(join(folder, 'report (1)-figures')).length).toBeGreaterThanOrEqual(2);
  const { figures: plain } = writeReport(join(folder, 'report(1).md'), SHOP, markdownReport, false);
  expect(plain).toBe('report(1)-figures');
  expect(readdirSync(join(folder, 'report(1)-figures')).length).toBeGreaterThanOrEqual(2);
});

test('A report that is there is left alone, and nothing is written beside it', () => {
  const folder = folderWith({ 'report.md': 'mine' });
  const { writing } = writeReport(join(folder, 'report.md'), SHOP, markdownReport, false);
  expect(writing).toEqual({ ok: false, why: 'exists' });
  expect(readFileSync(join(folder, 'report.md'), 'utf8')).toBe('mine');
  expect(existsSync(join(folder, 'report-figures'))).toBe(false);
});

test('Where the folder of the figures is a file, that is said', () => {
  const folder = folderWith({ 'report-figures': 'mine' });
  const { writing } = writeReport(join(folder, 'report.md'), SHOP, markdownReport, true);
  expect(writing).toMatchObject({ ok: false, why: 'failed' });
  expect(readFileSync(join(folder, 'report-figures'), 'utf8')).toBe('mine');
});

test('Where the folder of the figures is a link, nothing is written through it, and no report without them', () => {
  const folder = folderWith({ 'elsewhere/mine.txt': 'mine' });
  symlinkSync(join(folder, 'elsewhere'), join(folder, 'report-figures'));
  const { writing } = writeReport(join(folder, 'report.md'), SHOP, markdownReport, true);
  expect(writing).toMatchObject({
    ok: false,
    why: 'failed',
    words: expect.stringContaining('a link is there'),
  });
  expect(readdirSync(folder).sort()).toEqual(['elsewhere', 'report-figures']);
  expect(readdirSync(join(folder, 'elsewhere'))).toEqual(['mine.txt']);
});

test('Where the folder of the report is missing, none is made', () => {
  const folder = folderWith({});
  const { writing } = writeReport(join(folder, 'nowhere', 'report.md'), SHOP, markdownReport, true);
  expect(writing).toMatchObject({ words: 'there is no such folder' });
  expect(readdirSync(folder)).toEqual([]);
});

test('A report without figures has no folder beside it', () => {
  const folder = folderWith({});
  const { figures } = writeReport(join(folder, 'report.md'), SHOP, () => '# Nothing to see\n', false);
  expect(figures).toBeNull();
  expect(readdirSync(folder)).toEqual(['report.md']);
});

test('A paper with figures comes out the same, and one that says other words of a figure does not', () => {
  const machines = SHOP.inputs.catalog.machines.filter(({ id }) => id === 'alder');
  const rotaries = SHOP.inputs.catalog.rotaries.filter(({ id }) => id === 'lapwing');
  const small: Decision = {
    ...SHOP,
    inputs: { ...SHOP.inputs, catalog: { ...SHOP.inputs.catalog, machines, rotaries } },
  };
  const again = verify(markdownReport(small, 'x-figures'), 'x.md');
  expect(
    again.ok ? again.value.differences.filter(({ says }) => says?.includes('x-figures')) : again.problems,
  ).toEqual([]);
  const paper = markdownReport(small, 'x-figures').replace('margin 23.11 mm', 'margin 93.11 mm');
  const found = verify(paper, 'x.md');
  const wrong = found.ok
    ? found.value.differences.filter(({ says }) => says?.includes('93.11'))
    : found.problems;
  expect(wrong).toHaveLength(1);
});
