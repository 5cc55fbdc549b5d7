import { type Row, textOfRow } from '../look/row.ts';

/** Rows as they are, for the moment until what draws is loaded. */
export const plainFrame = (rows: readonly Row[], pointer: string): string =>
  `\u001b[2J\u001b[H${rows.map((row) => `${row.item === undefined ? '' : row.item.marked ? `${pointer} ` : '  '}${textOfRow(row)}`.trimEnd()).join('\r\n')}`;
