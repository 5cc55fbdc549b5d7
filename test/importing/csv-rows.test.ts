import { describe, expect, test } from 'vitest';
import { csvRows } from '../../src/importing/sheet/csv-rows.ts';

async function read(text: string | Uint8Array, cut = 7) {
  const bytes = typeof text === 'string' ? Buffer.from(text) : text;
  async function* pieces() {
    for (let at = 0; at < bytes.length; at += cut) yield bytes.subarray(at, at + cut);
  }
  const rows: (readonly string[])[] = [];
  try {
    for await (const { row, cells } of csvRows(pieces())) rows.push([String(row), ...cells]);
  } catch (error) {
    return { rows, error: error as { found: string; line: number } };
  }
  return { rows, error: null };
}

describe('a table as text', () => {
  test.each([
    [',', 'Model,Swing (mm)\nWren,180\n'],
    [';', 'Model;Swing (mm)\r\nWren;180\r\n'],
    ['tab', 'Model\tSwing (mm)\rWren\t180'],
  ])('with %s between cells', async (_, text) => {
    expect((await read(text)).rows).toEqual([
      ['1', 'Model', 'Swing (mm)'],
      ['2', 'Wren', '180'],
    ]);
  });

  test('letters that are cut between two reads, and a byte order mark', async () => {
    const { rows } = await read('\ufeffModel,Swing (mm)\nGråsißka,180\n', 1);
    expect(rows[0]?.[1]).toBe('Model');
    expect(rows[1]?.[1]).toBe('Gråsißka');
  });

  test('quoted cells with separators, line ends and inch marks; rows count as in a spreadsheet', async () => {
    const { rows } = await read('Model,Swing (in)\n\n"Wren,\nlarge","3 1/2"""\nDipper,5"\n');
    expect(rows.slice(2)).toEqual([
      ['3', 'Wren, large', '3 1/2"'],
      ['4', 'Dipper', '5"'],
    ]);
  });

  test('signs that steer a display are taken out', async () => {
    expect((await read('Model\n\u001b[2JWren\u202e\n')).rows[1]).toEqual(['2', '[2JWren']);
  });

  test('ten thousand rows in small pieces', async () => {
    const { rows, error } = await read(`Model,Swing (mm)\n${'Wren,180\n'.repeat(10_000)}`, 4096);
    expect(error).toBe(null);
    expect(rows.length).toBe(10_001);
  });
});

describe('what is no table is refused, with the line', () => {
  test('a quotation mark that is never closed', async () => {
    const { error } = await read('Model,Swing (mm)\nWren,180\n"Dipper,190\nRobin,3\n');
    expect(error?.found).toMatch(/never closed/);
    expect(error?.line).toBeGreaterThan(2);
  });

  test('another encoding', async () => {
    const latin = Buffer.from('Model,Swing (mm)\nGr\u00e5,180\n', 'latin1');
    expect((await read(latin)).error).toMatchObject({ found: expect.stringMatching(/not UTF-8/), line: 2 });
    const wide = Buffer.from('\ufeffModel,Swing\n', 'utf16le');
    expect((await read(wide)).error?.found).toBe('the file is in UTF-16');
  });

  test('other bytes, an old workbook, nothing', async () => {
    expect((await read('Model\0\0')).error?.found).toBe('the file is no text');
    expect((await read(Buffer.from([0xd0, 0xcf, 0x11, 0xe0]), 4)).error?.found).toMatch(/old kind/);
    expect((await read('')).error?.found).toBe('the file is empty');
    expect((await read(' \n\n')).error?.found).toBe('the file is empty');
  });
});
