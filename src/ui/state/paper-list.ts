import type { Written } from '../../session/session.ts';

/** What can be written, as it is listed. */
export const PAPER_LIST: readonly Written[] = [
  'report',
  'decision',
  'answers',
  'half-page',
  'site-sheet',
  'quote-sheets',
  'variants',
];

/** What a row of the list says. */
export const PAPERS: Readonly<Record<Written, string>> = {
  report: 'Write the whole report, as Markdown',
  decision: 'Write the decision with every number, as JSON',
  answers: 'Write the answers, as an answers file',
  'half-page': 'Write the half page for who lends the money',
  'site-sheet': 'Write the site sheet: what to measure, and whom to ask',
  'quote-sheets': 'Write the quote sheets for the sellers',
  variants: 'Write the variants, side by side',
};
