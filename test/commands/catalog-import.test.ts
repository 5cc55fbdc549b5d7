import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readCatalog } from '../../src/catalog/read.ts';
import { catalogImport } from '../../src/commands/catalog-import.ts';
import { workbook } from '../importing/workbook.ts';
import { folderWith } from '../temporary-folder.ts';

async function run(folder: string, file: string, options: Parameters<typeof catalogImport>[1] = {}) {
  const results: string[] = [];
  const remarks: string[] = [];
  const lines = {
    result: (line: string) => results.push(line),
    remark: (line: string) => remarks.push(line),
  };
  const code = await catalogImport(file, options, lines, folder);
  return { code, results, remarks: remarks.map((line) => line.replaceAll(folder, '')) };
}

const LIST = 'Model,Type,Swing (in),Mass (kg)\nWren,trunnion,7.5,95\nDipper,single axis,8,42\n';

describe('a table becomes a catalog that can be read', () => {
  test('as CSV, into a folder named after it', async () => {
    const folder = folderWith({ 'list.csv': LIST });
    const { code, results, remarks } = await run(folder, 'list.csv');
    expect(remarks).toEqual([]);
    expect(code).toBe(0);
    expect(results[0]).toBe('list.csv: 2 of 2 rows under the headings of row 1 are taken as rotaries.');
    expect(results.at(-1)).toBe(`Written: ${join('list-catalog', 'rotaries.yaml')}, 2 rows.`);
    const catalog = readCatalog([join(folder, 'list-catalog')]);
    expect(catalog.ok && catalog.value.rotaries.map(({ id, swing }) => [id, swing])).toEqual([
      ['wren', 190.5],
      ['dipper', 203.2],
    ]);
  });

  test('as a workbook: rotaries and machines on sheets of their own, the rest asked about', async () => {
    const folder = folderWith({});
    writeFileSync(
      join(folder, 'list.xlsx'),
      workbook(
        {
          Rotaries: [
            ['Model', 'Type', 'Swing (mm)'],
            ['Wren', 'trunnion', 180],
          ],
          Machines: [
            ['Model', 'Kind', 'Travel (mm)', null, null],
            [null, null, 'X', 'Y', 'Z'],
            ['Rowan', 'VMC', 760, 510, { formula: 'D3', value: '510' }],
          ],
        },
        'C1:E1',
      ),
    );
    const { code, remarks } = await run(folder, 'list.xlsx', { out: 'own' });
    expect(remarks).toEqual([]);
    expect(code).toBe(0);
    const catalog = readCatalog([join(folder, 'own')]);
    expect(catalog.ok && catalog.value.machines[0]?.travel).toEqual([760, 510, 510]);
    expect(catalog.ok && catalog.value.rotaries[0]?.swing).toBe(180);
    expect(readFileSync(join(folder, 'own', 'machines.yaml'), 'utf8')).toContain('# sheet Machines, row 3');
  });

  test('cells that are not understood are told by their place, exit code 4', async () => {
    const folder = folderWith({ 'list.csv': LIST.replace('7.5', 'large').replace('42', '0') });
    const { code, remarks } = await run(folder, 'list.csv');
    expect(code).toBe(4);
    expect(remarks).toEqual([
      'list.csv: cell C2 (Swing (in)): "large" is no number, expected a length in mm, cm, m, µm, in, ft or thou',
      'list.csv: cell D3 (Mass (kg)): mass is 0, expected more than 0 kg',
    ]);
  });
});

describe('the map', () => {
  const OPEN = 'Model;Ø;Weight;Color;Price\nWren;180;95;red;28500\n';

  test('is written, edited and given back', async () => {
    const folder = folderWith({ 'list.csv': OPEN });
    const first = await run(folder, 'list.csv');
    expect(first.code).toBe(2);
    expect(existsSync(join(folder, 'list-catalog'))).toBe(false);
    const path = join(folder, 'list.map.yaml');
    const text = readFileSync(path, 'utf8');
    expect(text).toContain('{ column: D, heading: "Color", key: unknown }');
    const edited = text
      .replace('rows: unknown', 'rows: rotaries')
      .replace('units: unknown', 'units: mm')
      .replace('currency: unknown', 'currency: EUR')
      .replace('fixed: {}', 'fixed: { class: trunnion }')
      .replace('heading: "Model", key: unknown', 'heading: "Model", key: name')
      .replace('heading: "Ø", key: unknown', 'heading: "Ø", key: swing')
      .replace('heading: "Weight", key: unknown', 'heading: "Weight", key: mass')
      .replace('heading: "Price", key: unknown', 'heading: "Price", key: price')
      .replace('heading: "Color", key: unknown', 'heading: "Color", key: skip');
    writeFileSync(path, edited);
    const second = await run(folder, 'list.csv', { map: 'list.map.yaml' });
    expect(second.remarks).toEqual([]);
    expect(second.code).toBe(0);
    const catalog = readCatalog([join(folder, 'list-catalog')]);
    expect(catalog.ok && catalog.value.rotaries[0]).toMatchObject({ swing: 180, mass: 95, price: 28500 });
    expect(catalog.ok && catalog.value.currency).toBe('EUR');
    expect(readFileSync(path, 'utf8')).toBe(edited);
  });

  test('that is there already is left as it is', async () => {
    const folder = folderWith({ 'list.csv': OPEN, 'list.map.yaml': 'mine' });
    const { remarks } = await run(folder, 'list.csv', { overwrite: true });
    expect(remarks.join()).toContain('There is a map already');
    expect(readFileSync(join(folder, 'list.map.yaml'), 'utf8')).toBe('mine');
  });

  test('with faults is refused, each with its place', async () => {
    const map =
      'format: fivesides-map/1\nsheets:\n  - rows: rotaries\n    columns:\n      - { column: C, heading: "Swing (in)", key: swng, unit: kg }\n      - { column: D, heading: Mass, key: mass }\n';
    const folder = folderWith({
      'list.csv': LIST,
      'a.yaml': map,
      'b.yaml': map.replace('swng', 'swing').replace(', unit: kg', ''),
    });
    const wrong = await run(folder, 'list.csv', { map: 'a.yaml' });
    expect(wrong.code).toBe(2);
    expect(wrong.remarks[0]).toMatch(/^a\.yaml:5:50: .*"swng" is no key.*did you mean "swing"/);
    const stranger = await run(folder, 'list.csv', { map: 'b.yaml' });
    expect(stranger.code).toBe(2);
    expect(stranger.remarks[0]).toMatch(/^b\.yaml:6:31: .*is not the heading of that column/);
    expect((await run(folder, 'list.csv', { map: 'none.yaml' })).remarks[0]).toMatch(
      /^none\.yaml:0:0: there is no such file/,
    );
    expect(readdirSync(folder).toSorted()).toEqual(['a.yaml', 'b.yaml', 'list.csv']);
  });
});

describe('nothing is lost', () => {
  test('what is there is replaced only where that is said, and then all or nothing', async () => {
    const folder = folderWith({ 'list.csv': LIST, 'own/rotaries.yaml': 'mine' });
    const { code, remarks } = await run(folder, 'list.csv', { out: 'own' });
    expect(code).toBe(2);
    expect(remarks[0]).toMatch(/is there already: say --overwrite.*Nothing is written/);
    expect(readFileSync(join(folder, 'own', 'rotaries.yaml'), 'utf8')).toBe('mine');
    expect((await run(folder, 'list.csv', { out: 'own', overwrite: true })).code).toBe(0);
    expect(readCatalog([join(folder, 'own')]).ok).toBe(true);
    expect(readdirSync(join(folder, 'own'))).toEqual(['rotaries.yaml']);
  });

  test('a link is not written through', async () => {
    const folder = folderWith({ 'list.csv': LIST, 'target.yaml': 'mine' });
    mkdirSync(join(folder, 'own'));
    symlinkSync(join(folder, 'target.yaml'), join(folder, 'own', 'rotaries.yaml'));
    const { code, remarks } = await run(folder, 'list.csv', { out: 'own', overwrite: true });
    expect(code).toBe(2);
    expect(remarks[0]).toContain('a link is there');
    expect(readFileSync(join(folder, 'target.yaml'), 'utf8')).toBe('mine');
  });

  test.each(['list.csv', join('list.csv', 'deeper')])('a file where the folder would be: %s', async (out) => {
    const folder = folderWith({ 'list.csv': LIST });
    const { code, remarks } = await run(folder, 'list.csv', { out });
    expect(code).toBe(2);
    expect(remarks).toEqual([`${out}: a file is where its folder would have to be. Nothing is written.`]);
    expect(readdirSync(folder)).toEqual(['list.csv']);
  });

  test.each([
    ['no-such.csv', 'there is no such file'],
    ['folder', 'this is a folder'],
    ['empty.csv', 'the file is empty'],
    ['broken.xlsx', 'the workbook is cut off or broken'],
    ['line.csv', 'line.csv:1:1: a row that begins here has more than a million characters'],
    ['open.csv', 'a quotation mark that is opened here is never closed'],
  ])('%s cannot be used, and nothing is written', async (file, why) => {
    const folder = folderWith({
      'folder/a.txt': '',
      'empty.csv': '\n',
      'broken.xlsx': 'PK\u0003\u0004 and nothing else',
      'line.csv': 'a'.repeat(1_100_000),
      'open.csv': `${LIST}"Robin,trunnion,3\n`,
    });
    const before = readdirSync(folder);
    const { code, remarks } = await run(folder, file);
    expect(code).toBe(2);
    expect(remarks).toHaveLength(1);
    expect(remarks[0]).toContain(why);
    expect(readdirSync(folder)).toEqual(before);
  });
});
