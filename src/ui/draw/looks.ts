import type { Tone } from '../look/row.ts';

/** How a tone looks. Never by color alone: sign and word say the same. */
export interface Look {
  readonly color?: 'cyan' | 'yellow' | 'red';
  readonly bold?: boolean;
  readonly dimColor?: boolean;
  readonly inverse?: boolean;
}

export const LOOKS: Readonly<Record<Tone, Look>> = {
  plain: {},
  strong: { bold: true },
  title: { bold: true },
  quiet: { dimColor: true },
  marked: { inverse: true },
  error: { color: 'red', bold: true },
  holds: { color: 'cyan' },
  'holds if': { color: 'yellow' },
  open: { bold: true },
  fails: { color: 'red', bold: true },
};
