/** A table in CSV as spreadsheets read it: commas, quotation marks where they are needed, a line break behind each row. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map(quotedCell).join(',')}\r\n`).join('');

/** A text that a spreadsheet would work out is kept from being a formula. */
function quotedCell(cell: string): string {
  const plain = /^[=@+\t\r]/.test(cell) || /^-(?![\d.])/.test(cell) ? `'${cell}` : cell;
  return /[",;\r\n]/.test(plain) || plain.trim() !== plain ? `"${plain.replaceAll('"', '""')}"` : plain;
}
