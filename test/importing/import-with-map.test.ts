import { describe, expect, test } from 'vitest';
import { NO_MAP } from '../../src/importing/mapping/import-map.ts';
import { mapText } from '../../src/importing/mapping/map-text.ts';
import { readMap } from '../../src/importing/mapping/read-map.ts';
import { imported, sheetMap, sheetOf } from './sheet-of.ts';

describe('a map', () => {
  test('says what the rows are, what every row is, what a column is and its unit', () => {
    const map = sheetMap({
      rows: 'rotaries',
      fixed: { class: 'trunnion' },
      columns: [
        { column: 'B', heading: 'Ø', keys: ['swing'], unit: 'in' },
        {
          column: 'C',
          heading: 'Clamping (N·m)',
          keys: ['brakeTorque.rotary', 'brakeTorque.tilt'],
          unit: 'N·m',
        },
        { column: 'D', heading: 'Color', keys: 'skip', unit: null },
      ],
    });
    const { rows, open, told } = imported('Model | Ø | Clamping (N·m) | Color\nWren | 10 | 300 | red', map);
    expect(rows[0]).toEqual({
      id: 'wren',
      name: 'Wren',
      class: 'trunnion',
      swing: 254,
      brakeTorque: { rotary: 300, tilt: 300 },
    });
    expect(told).toEqual([]);
    expect(open).toBe(false);
  });

  test('says what is meant by words in cells, and asks for those that are not understood', () => {
    const lines =
      'Model | Type | Swing (mm) | Price (EUR)\nWren | tilting rotary | 180 | POA\nRobin | Tilting Rotary | 200 | poa\nDipper | 5C unit | 100 | 900';
    const before = imported(lines);
    expect(before.rows).toEqual([]);
    expect(before.open).toBe(true);
    const text = mapText('list.csv', NO_MAP, 'EUR', before.sheets);
    expect(text).toContain('key: class, cells: { "tilting rotary": unknown, "5C unit": unknown } }');
    expect(text).toContain('key: price, cells: { "POA": unknown } }');
    expect(text).toContain('#   id, name, maker, class, faceplate,');
    const said = text
      .replace('"tilting rotary": unknown', '"tilting rotary": trunnion')
      .replace('"POA": unknown', '"POA": "-"');
    const map = readMap(said, 'list.map.yaml');
    if (!map.ok) throw new Error('the map is not read');
    const { rows, told, open } = imported(lines, map.value.map);
    expect(rows).toMatchObject([
      { class: 'trunnion', swing: 180 },
      { class: 'trunnion', swing: 200 },
    ]);
    expect(rows.map(({ price }) => price)).toEqual([undefined, undefined]);
    expect(told).toEqual(['B4 "5C unit" is none of them']);
    expect(open).toBe(true);
  });

  test('says which keys share a cell, in order; one number is of all of them', () => {
    const columns = [
      { column: 'B', heading: 'Load (kg)', keys: ['payload.level', 'payload.tilted'], unit: 'kg' },
      { column: 'C', heading: 'Base', keys: ['base.along', 'base.across'], unit: 'mm' },
      { column: 'D', heading: 'Key', keys: ['base.centerAlong', 'base.centerAcross'], unit: 'in' },
    ] as const;
    const map = sheetMap({ rows: 'rotaries', fixed: { class: 'trunnion' }, columns });
    const { rows, told } = imported(
      'Model | Load (kg) | Base | Key\nWren | 60/40 | 620x410 | 5/8\nRobin | 75 | 24.5 x 16 in | \nSiskin | approx. 80 | 600 | ',
      map,
    );
    expect(rows).toMatchObject([
      { payload: { level: 60, tilted: 40 }, base: { along: 620, across: 410, centerAlong: 15.875 } },
      { payload: { level: 75, tilted: 75 }, base: { along: 622.3, across: 406.4 } },
      { base: { along: 600, across: 600 } },
    ]);
    expect(told).toEqual(['B4 "approx. 80" is no number']);
  });

  test('says which keys share a cell with a number without a unit', () => {
    const keys = ['table.slots.count', 'table.slots.width', 'table.slots.pitch'];
    const columns = [{ column: 'C', heading: 'T-slots', keys, unit: null }] as const;
    const map = sheetMap({ rows: 'machines', columns });
    const { rows, told } = imported(
      'Model | Kind | T-slots\nRowan | mill | 3 x 18 x 100 mm\nAlder | mill | 3\nLarch | mill | n/a',
      map,
    );
    expect(rows).toMatchObject([{ table: { slots: { count: 3, width: 18, pitch: 100 } } }, {}, {}]);
    expect(rows[1]).not.toHaveProperty('table');
    expect(told).toEqual(['C3 "3" is not so many numbers']);
  });

  test('that names a column which is not there is told', () => {
    const map = sheetMap({
      rows: 'rotaries',
      columns: [{ column: 'B', heading: 'Swing', keys: ['swing'], unit: 'in' }],
    });
    const { plan } = sheetOf('Model | Sving\nWren | 10', {
      units: 'mm',
      decimals: 'unknown',
      currency: 'unknown',
      source: { maker: 'unknown', document: 'unknown', date: 'unknown' },
      sheets: map.sheets ?? [],
    });
    expect(plan.strangers).toEqual([{ index: 0, heading: 'Swing' }]);
  });
});
