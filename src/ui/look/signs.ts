import { plainAscii } from '../../report/exports/plain-ascii.ts';
import type { Row } from './row.ts';

/** Our own signs, each one column wide everywhere, and what stands for them in plain ASCII. */
const TWINS: Readonly<Record<string, string>> = {
  '❯': '>',
  '▲': '^',
  '▼': 'v',
  '─': '-',
  '━': '=',
  '│': '|',
  '█': '#',
  '▓': '%',
  '↑': '^',
  '↓': 'v',
  '←': '<',
  '→': '>',
  '✓': '+',
  '✗': 'x',
  '▏': '|',
  '…': '~',
};

/**
 * The row in plain ASCII, as far as it is our own text; letters of names stay. Our own signs keep their width; symbols
 * of texts are spelled out before these are laid out.
 */
export const asciiRow = (row: Row): Row => ({
  ...row,
  spans: row.spans.map((span) => ({
    ...span,
    text: plainAscii(span.text.replace(/[^ -~]/g, (sign) => TWINS[sign] ?? sign)),
  })),
});
