import type { Decision } from '../../rules/decision.ts';
import type { Block } from '../blocks/block.ts';
import { acceptance } from '../sections/acceptance.ts';
import { halfPage } from '../sections/half-page.ts';
import { title } from '../sections/preamble.ts';
import { quoteSheetsForSellers } from '../sections/quote-sheets.ts';
import { siteSheet } from '../sections/site-sheet.ts';
import { markdownOf } from './markdown.ts';
import { type TextLook, textLines } from './text-blocks.ts';

/** A paper of the report that goes to somebody by itself. */
export const PAPERS = ['half-page', 'site-sheet', 'quote-sheets'] as const;
export type Paper = (typeof PAPERS)[number];

type Section = (decision: Decision) => readonly Block[];

const SECTIONS: Readonly<Record<Paper, readonly Section[]>> = {
  'half-page': [title, halfPage],
  'site-sheet': [title, siteSheet],
  'quote-sheets': [title, quoteSheetsForSellers, acceptance],
};

const blocksOf = (decision: Decision, paper: Paper): readonly Block[] =>
  SECTIONS[paper].flatMap((section) => section(decision));

/** One paper of the report as Markdown. Ends with one line break. */
const paperMarkdown = (decision: Decision, paper: Paper): string =>
  markdownOf(blocksOf(decision, paper), decision);

/** The same as plain text, for a letter or a mail. Ends with one line break. */
const paperText = (decision: Decision, paper: Paper, look: TextLook): string =>
  `${textLines(blocksOf(decision, paper), decision, look).join('\n').trimEnd()}\n`;

const TEXT_WIDTH = 80;

/** The same as the name of a file asks for: text where it ends in .txt, else Markdown. */
export const paperInFile = (decision: Decision, paper: Paper, file: string): string =>
  /\.txt$/i.test(file)
    ? paperText(decision, paper, { width: TEXT_WIDTH, ascii: false })
    : paperMarkdown(decision, paper);
