import readWorkbook from 'read-excel-file/node';
import { cleaned, type SheetRow } from '../../documents/sheet-row.ts';
import { roundSignificant } from '../../quantities/round-significant.ts';
import { MOST_ROWS, tooManyRows, UnreadableSheet } from './unreadable-sheet.ts';
import { guardWorkbook } from './workbook-guard.ts';

export interface WorkbookSheet {
  readonly sheet: string;
  readonly rows: readonly SheetRow[];
}

/** The sheets of a workbook; of a formula its last value. What is none throws an UnreadableSheet. */
export async function xlsxSheets(bytes: Buffer): Promise<readonly WorkbookSheet[]> {
  guardWorkbook(bytes);
  const sheets = await readWorkbook(bytes).catch((error: unknown) => {
    // what trips inside the reader is no word for whoever has the file
    const isSaid = error instanceof Error && error.constructor === Error;
    const why = isSaid ? error.message : 'its parts do not fit together';
    throw new UnreadableSheet(
      `the workbook cannot be read (${why})`,
      'expected .xlsx: save it once more as one',
    );
  });
  return sheets.map(({ sheet, data }) => {
    if (data.length > MOST_ROWS) throw tooManyRows();
    return {
      sheet: cleaned(sheet),
      rows: data.map((cells, index) => ({
        row: index + 1,
        cells: cells.map((cell) => cleaned(textOf(cell))),
      })),
    };
  });
}

function textOf(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  // sums of binary fractions are written as a spreadsheet shows them
  if (typeof cell === 'number') return String(roundSignificant(cell));
  return cell instanceof Date ? `${cell.toISOString().slice(0, 10)} (a date)` : String(cell);
}
