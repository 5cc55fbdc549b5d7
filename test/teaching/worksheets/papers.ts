import { JSDOM } from 'jsdom';
import type { ReadyLesson } from '../../../src/teaching/lessons/run-lesson.ts';
import {
  solutionsMarkdown,
  worksheetFigures,
  worksheetMarkdown,
} from '../../../src/teaching/worksheets/exports.ts';
import { type SheetOptions, sheetOf } from '../../../src/teaching/worksheets/sheet.ts';
import { nodesOf, parseMarkdown } from '../../report/markdown-text.ts';
import { byMathjs } from '../by-mathjs.ts';
import { leaksOf } from './leaks.ts';
import { type ReadSheet, readSheet } from './read-sheet.ts';
import { isRight, solved } from './solve-sheet.ts';

const { DOMParser } = new JSDOM('').window;

/** A worksheet and its key as they are handed out, and what a reader finds on the sheet. */
export interface Papers {
  readonly ready: ReadyLesson;
  readonly sheet: ReturnType<typeof sheetOf>;
  readonly markdown: string;
  readonly key: string;
  readonly read: ReadSheet;
}

export function papersOf(ready: ReadyLesson, options: SheetOptions): Papers {
  const sheet = sheetOf(ready, options);
  const markdown = worksheetMarkdown(sheet, 'figures');
  return { ready, sheet, markdown, key: solutionsMarkdown(sheet), read: readSheet(markdown) };
}

/** Steps that somebody with the sheet and a calculator does not get right, with the program's own and with another one. */
export function unsolvedIn({ ready, read }: Papers): readonly string[] {
  const { steps } = read;
  const missing = steps.length === ready.keys.length ? [] : [`${steps.length} of ${ready.keys.length} steps`];
  return [
    ...missing,
    ...steps.flatMap((step, index) => {
      const key = ready.keys[index];
      const own = solved(step, read);
      const other = solved(step, read, byMathjs);
      const options = key?.kind === 'choice' ? key.options : [];
      if (step.options.join() !== options.join()) return [`step ${step.number}: ${step.options.join(' | ')}`];
      return [own, other].flatMap((text) =>
        text !== null && isRight(ready, index, text)
          ? []
          : [`step ${step.number}: ${text}, not ${key?.value}`],
      );
    }),
  ];
}

/** What is wrong with the Markdown of both papers as remark-gfm reads it, and with the pictures. */
export function ungainlyIn({ ready, sheet, markdown, key, read }: Papers): readonly string[] {
  const uneven = [markdown, key].flatMap((paper) =>
    nodesOf(parseMarkdown(paper)).flatMap((node) =>
      node.type === 'table' && new Set(node.children.map((row) => row.children.length)).size > 1
        ? ['a table of uneven rows']
        : [],
    ),
  );
  const odd = [markdown, key].flatMap(
    (paper) => paper.match(/NaN|undefined|\[object|not known|\(blank\)|\n\n\n/) ?? [],
  );
  const files = worksheetFigures(sheet);
  const named = files.map(({ name }) => `figures/${name}`).join();
  const unread = files.flatMap(({ name, text }) => {
    const drawn = new DOMParser().parseFromString(text, 'image/svg+xml');
    return drawn.querySelector('parsererror') === null && drawn.querySelectorAll('path, circle').length > 5
      ? []
      : [`${name} is not drawn`];
  });
  const answers = key.match(/^Answer: \*\*.+\*\*/gm)?.length ?? 0;
  return [
    ...uneven,
    ...odd,
    ...(read.images.map(({ url }) => url).join() === named ? [] : [`pictures: ${named}`]),
    ...unread,
    ...(answers === ready.keys.length ? [] : [`${answers} answers in the key`]),
  ];
}

export const leaksIn = ({ sheet, markdown }: Papers): readonly string[] => leaksOf(sheet, markdown);
