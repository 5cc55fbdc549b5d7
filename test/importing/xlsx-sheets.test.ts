import { describe, expect, test } from 'vitest';
import { xlsxSheets } from '../../src/importing/sheet/xlsx-sheets.ts';
import { workbook, zip } from './workbook.ts';

const refusal = (bytes: Buffer) =>
  xlsxSheets(bytes).then(
    () => null,
    (error: { found?: string }) => error.found,
  );

describe('a workbook', () => {
  test('each sheet, texts and numbers, rows as the spreadsheet counts', async () => {
    const sheets = await xlsxSheets(
      workbook({
        Rotaries: [['Model', 'Swing (mm)'], [], ['Wren', 180.5]],
        Notes: [['nothing']],
      }),
    );
    expect(sheets.map(({ sheet }) => sheet)).toEqual(['Rotaries', 'Notes']);
    expect(sheets[0]?.rows[2]).toEqual({ row: 3, cells: ['Wren', '180.5'] });
  });

  test('of a formula the value that was kept, of a sum what the spreadsheet shows', async () => {
    const [sheet] = await xlsxSheets(
      workbook({ A: [[{ formula: 'B1&amp;"x"', value: 'Wren' }, 0.1 + 0.2]] }),
    );
    expect(sheet?.rows[0]?.cells).toEqual(['Wren', '0.3']);
  });
});

describe('what is none, or would fill the memory, is refused', () => {
  const good = workbook({ A: [['Model'], ['Wren']] });

  test('cut off', async () => {
    expect(await refusal(good.subarray(0, good.length - 40))).toMatch(/cut off or broken/);
    expect(await refusal(good.subarray(0, 10))).toMatch(/cut off or broken/);
  });

  test('packed files that are no workbook', async () => {
    expect(await refusal(zip({ 'a.txt': 'nothing' }))).toMatch(/cannot be read/);
  });

  test('one that says it unpacks to a gigabyte', async () => {
    expect(await refusal(zip({ 'a.xml': 'nothing' }, 2 ** 30))).toMatch(/more than 100 MB/);
  });

  test('a cell far out', async () => {
    const far = zip({
      'xl/worksheets/sheet1.xml':
        '<worksheet><sheetData><row r="1048576"><c r="XFD1048576"/></row></sheetData></worksheet>',
    });
    expect(await refusal(far)).toBe('a sheet reaches to row 1048576 and column 16384');
  });
});
