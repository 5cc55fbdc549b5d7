import { JSDOM } from 'jsdom';
import { lint } from 'markdownlint/sync';
import { describe, expect, test } from 'vitest';
import { explanationMarkdown } from '../../../src/teaching/exports.ts';
import { findTopics } from '../../../src/teaching/find-topic.ts';
import {
  solutionsMarkdown,
  worksheetFigures,
  worksheetMarkdown,
} from '../../../src/teaching/worksheets/exports.ts';
import { sheetOf } from '../../../src/teaching/worksheets/sheet.ts';
import { nodesOf, parseMarkdown, readText } from '../../report/markdown-text.ts';
import { byMathjs } from '../by-mathjs.ts';
import { LESSON_NAMES, readyLesson } from '../lessons/lesson-fixture.ts';
import { leaksOf } from './leaks.ts';
import { readSheet } from './read-sheet.ts';
import { isRight, solved } from './solve-sheet.ts';

/** As other papers: without a limit on the length of lines. */
const RULES = { default: true, MD013: false };
const { DOMParser } = new JSDOM('').window;

describe.each(LESSON_NAMES)('%s', (name) => {
  const ready = readyLesson(name);

  describe.each(['mm', 'inch'] as const)('in %s', (units) => {
    const sheet = sheetOf(ready, { name, seed: null, units });
    const markdown = worksheetMarkdown(sheet, 'figures');
    const key = solutionsMarkdown(sheet);
    const read = readSheet(markdown);

    test('is solved from the sheet alone, also with another calculator', () => {
      expect(read.steps.map(({ number }) => number)).toEqual(ready.keys.map((_, index) => index + 1));
      for (const [index, step] of read.steps.entries()) {
        const wanted = ready.keys[index];
        const own = solved(step, read);
        if (own === null) expect(wanted?.worked).toBeNull();
        else {
          expect(own, `step ${step.number}`).toSatisfy((text: string) => isRight(ready, index, text));
          expect(solved(step, read, byMathjs)).toSatisfy((text: string) => isRight(ready, index, text));
        }
        expect(step.options).toEqual(wanted?.kind === 'choice' ? wanted.options : []);
      }
    });

    test('every number has a formula', () => {
      const kinds = ready.keys.map(({ kind }) => kind);
      expect(read.steps.map((step, index) => kinds[index] === 'choice' || step.asked !== null)).not.toContain(
        false,
      );
    });

    test('tells nothing that is asked for', () => {
      expect(leaksOf(sheet, markdown)).toEqual([]);
    });

    test('worksheet and key pass markdownlint, and are tables of even rows', () => {
      const found = lint({ strings: { markdown, key }, config: RULES });
      expect([found.markdown, found.key].flat().map((each) => each?.ruleDescription)).toEqual([]);
      for (const paper of [markdown, key]) {
        const tables = nodesOf(parseMarkdown(paper)).flatMap((node) => (node.type === 'table' ? [node] : []));
        expect(tables.length).toBeGreaterThan(0);
        for (const { children } of tables)
          expect(new Set(children.map((row) => row.children.length)).size).toBe(1);
        expect(paper).not.toMatch(/NaN|undefined|\[object|not known|\(blank\)/);
        expect(paper.endsWith('\n') && !paper.endsWith('\n\n')).toBe(true);
      }
    });

    test('its pictures are there, and can be read', () => {
      const files = worksheetFigures(sheet);
      expect(read.images.map(({ url }) => url)).toEqual(files.map((file) => `figures/${file.name}`));
      expect(read.images.filter(({ alt }) => !/^To scale: \w/.test(alt))).toEqual([]);
      for (const { text } of files) {
        const drawn = new DOMParser().parseFromString(text, 'image/svg+xml');
        expect(drawn.querySelector('parsererror')).toBeNull();
        expect(drawn.querySelectorAll('path, circle').length).toBeGreaterThan(5);
      }
    });

    test('the key says what comes out of each step, and why', () => {
      const text = readText(key).replace(/\n/g, '');
      for (const [index, step] of ready.lesson.steps.entries()) {
        expect(text).toContain(step.why);
        const wanted = ready.keys[index];
        if (wanted?.kind === 'choice') expect(key).toContain(`Answer: **${wanted.value}**`);
      }
      expect(key.match(/^Answer: \*\*.+\*\*/gm)).toHaveLength(ready.keys.length);
    });
  });
});

test('formulas are those that an explanation prints', () => {
  const { steps } = readSheet(worksheetMarkdown(sheetOf(readyLesson('part-size'), OPTIONS)));
  const [topic] = findTopics('swing').found;
  const explained = topic === undefined ? '' : explanationMarkdown(topic.explain());
  const lines = worksheetMarkdown(sheetOf(readyLesson('part-size'), OPTIONS)).match(/`\w+ = [^`]+`/g) ?? [];
  expect(steps[0]?.steps.length).toBe(3);
  for (const line of lines.slice(0, 3)) expect(explained).toContain(line);
});

const OPTIONS = { name: 'part-size', seed: null, units: 'mm' } as const;

test('what is told too early is found: control of the test itself', () => {
  const sheet = sheetOf(readyLesson('reach'), { ...OPTIONS, name: 'reach' });
  const told = ['350 mm', 'about 14.73 in high', '| 29.9154 mm |'];
  for (const text of told) expect(leaksOf(sheet, `${worksheetMarkdown(sheet)}\n${text}\n`)).toHaveLength(1);
  expect(leaksOf(sheet, `${worksheetMarkdown(sheet)}\n1350 mm and 350 mm² and 350.5 mm\n`)).toEqual([]);
});
