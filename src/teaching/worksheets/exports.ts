import type { FigureFile } from '../../report/exports/figure-files.ts';
import type { Explained } from '../explained.ts';
import { explanationFigures, explanationMarkdown } from '../exports.ts';
import { givenSections } from './given-blocks.ts';
import type { Sheet } from './sheet.ts';
import { figureSection } from './sheet-figures.ts';
import { keyHead, sheetHead } from './sheet-head.ts';
import { solutionSections } from './solution-blocks.ts';
import { stepSections } from './step-blocks.ts';

function sheetSections(sheet: Sheet): readonly Explained[] {
  const figures = figureSection(sheet);
  return [
    sheetHead(sheet),
    ...givenSections(sheet),
    ...(figures === null ? [] : [figures]),
    ...stepSections(sheet),
  ];
}

/** A worksheet as Markdown; its pictures are in the folder that is named, else they are told in words. Ends with one line break. */
export const worksheetMarkdown = (sheet: Sheet, figures: string | null = null): string =>
  sheetSections(sheet)
    .map((section) => explanationMarkdown(section, figures, sheet.options.units))
    .join('\n');

/** The pictures of a worksheet as SVG. */
export const worksheetFigures = (sheet: Sheet): readonly FigureFile[] =>
  sheetSections(sheet).flatMap((section) => explanationFigures(section, sheet.options.units));

/** The key to a worksheet as Markdown: every step with its numbers. Ends with one line break. */
export const solutionsMarkdown = (sheet: Sheet): string =>
  [keyHead(sheet), ...solutionSections(sheet)]
    .map((section) => explanationMarkdown(section, null, sheet.options.units))
    .join('\n');
