import { CsvError, parse } from 'csv-parse/sync';
import { cleaned, type Separator, type SheetRow } from '../../documents/sheet-row.ts';

/** The table as it is with one sign between cells. `unclosed`: a quotation mark is never closed, and marks are text. */
export interface TableRows {
  readonly rows: readonly SheetRow[];
  readonly unclosed: boolean;
}

/**
 * The rows of a text that was copied or written by a spreadsheet, without those that are empty. A cell in quotation marks
 * may hold the separator or a line end. Never throws.
 * Example: tableRows('Name;Mass\n\nHinge;"0,8 kg"', ';').rows[1] → { row: 3, cells: ['Hinge', '0,8 kg'] }.
 */
export function tableRows(text: string, separator: Separator): TableRows {
  const lines = singled(text).replace(/\r\n?|[\u2028\u2029]/g, '\n');
  try {
    return { rows: rowsOf(lines, separator, '"'), unclosed: false };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { rows: rowsOf(lines, separator, false), unclosed: true };
  }
}

/** Some terminals paste both halves of a line end as a return each, so that every one is there twice. */
const singled = (text: string): string =>
  text.includes('\n') || /(?<!\r)(?:\r\r)*\r(?!\r)/.test(text) ? text : text.replace(/\r\r/g, '\r');

function rowsOf(lines: string, delimiter: Separator, quote: '"' | false): readonly SheetRow[] {
  const records: readonly (readonly string[])[] = parse(lines, {
    delimiter,
    quote,
    record_delimiter: '\n',
    bom: true,
    // an inch mark inside a cell is no quotation mark
    relax_quotes: true,
    relax_column_count: true,
    trim: delimiter !== '\t',
  });
  return records
    .map((cells, index) => ({ row: index + 1, cells: cells.map(cleaned) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}
