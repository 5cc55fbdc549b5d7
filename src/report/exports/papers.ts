import type { Decision } from '../../rules/decision.ts';
import type { Block } from '../blocks/block.ts';
import { acceptance } from '../sections/acceptance.ts';
import { halfPage } from '../sections/half-page.ts';
import { title } from '../sections/preamble.ts';
import { quoteSheetsForSellers } from '../sections/quote-sheets.ts';
import { siteSheet } from '../sections/site-sheet.ts';
import { inFile } from './in-file.ts';

/** A paper of the report that goes to somebody by itself. */
export const PAPERS = ['half-page', 'site-sheet', 'quote-sheets'] as const;
export type Paper = (typeof PAPERS)[number];

type Section = (decision: Decision) => readonly Block[];

const SECTIONS: Readonly<Record<Paper, readonly Section[]>> = {
  'half-page': [title, halfPage],
  'site-sheet': [title, siteSheet],
  'quote-sheets': [title, quoteSheetsForSellers, acceptance],
};

/** One paper of the report as the name of a file asks for. Ends with one line break. */
export const paperInFile = (decision: Decision, paper: Paper, file: string): string =>
  inFile(
    SECTIONS[paper].flatMap((section) => section(decision)),
    decision,
    file,
  );
