import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { List } from '../../src/catalog/catalog.ts';

import { FIELDS } from '../../src/importing/fields/index.ts';
import { finishImport } from '../../src/importing/finish-import.ts';
import { NO_MAP } from '../../src/importing/mapping/import-map.ts';
import { mapText } from '../../src/importing/mapping/map-text.ts';
import { readMap } from '../../src/importing/mapping/read-map.ts';
import { sheetImporter } from '../../src/importing/rows/import-sheet.ts';
import { csvRows } from '../../src/importing/sheet/csv-rows.ts';

const CELL = fc.oneof(
  fc.constantFrom(
    '',
    '-',
    '?',
    'none',
    'yes',
    'no',
    'standard',
    'option',
    '0',
    '-4',
    '1,500',
    '1.500',
    '90',
    '30 in',
  ),
  fc.constantFrom(
    '-20 … 110',
    '110..-20',
    '±30',
    '1 x 2 x 3',
    '80 / 160',
    'x',
    '5"',
    '3 1/2',
    '1e9',
    '=1+1',
    '#REF!',
  ),
  fc.constantFrom(
    'trunnion',
    'single-axis',
    'mill',
    'five-axis',
    'convertible',
    'vertical',
    'along x',
    'built-in',
    'unknown',
  ),
  fc.string({ maxLength: 12, unit: 'binary' }),
  fc.double().map(String),
);

const table = (list: List) =>
  fc
    .subarray(
      [...FIELDS[list]].filter(({ path }) => !['name', 'class', 'kind'].includes(path)),
      { minLength: 4 },
    )
    .chain((fields) => {
      const kind = list === 'rotaries' ? 'class' : 'kind';
      const headings = ['name', kind, ...fields.map(({ path }) => path)];
      const row = fc.array(CELL, { minLength: headings.length, maxLength: headings.length });
      return fc.record({ headings: fc.constant(headings), rows: fc.array(row, { maxLength: 6 }) });
    });

test.each(['rotaries', 'machines'] as const)(
  '%s: whatever stands in the cells, what is written can be read',
  (list) => {
    let taken = 0;
    fc.assert(
      fc.property(table(list), fc.constantFrom('mm', 'unknown'), ({ headings, rows }, units) => {
        const map = {
          ...NO_MAP,
          units,
          sheets: [{ sheet: null, rows: list, headings: [1], fixed: {}, columns: [] }],
        } as const;
        const importer = sheetImporter(null, map);
        for (const [at, cells] of [headings, ...rows].entries()) {
          const named =
            at === 0
              ? cells
              : [`Row ${at}`, list === 'rotaries' ? 'trunnion' : 'five axis', ...cells.slice(2)];
          importer.row({ row: at + 1, cells: at % 2 === 0 && at > 0 ? cells : named });
        }
        // reads back what it writes, and throws where that is refused
        const result = finishImport('any.csv', map, [importer.end()]);
        taken += result.counts[list];
        expect(readMap(mapText('any.csv', map, result.currency, result.sheets), 'any.map.yaml').ok).toBe(
          true,
        );
      }),
      { numRuns: 150, seed: 20261126 },
    );
    expect(taken).toBeGreaterThan(100);
  },
);

test('whatever bytes a file has, it is a table or is refused in words', async () => {
  let refused = 0;
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
      async function* pieces() {
        yield bytes;
      }
      try {
        for await (const { cells } of csvRows(pieces())) expect(Array.isArray(cells)).toBe(true);
      } catch (error) {
        refused += 1;
        expect(error).toMatchObject({ name: 'UnreadableSheet', found: expect.any(String) });
      }
    }),
    { numRuns: 300, seed: 20261126 },
  );
  expect(refused).toBeGreaterThan(10);
});
