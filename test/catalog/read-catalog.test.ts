import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { describeProblem } from '../../src/documents/problem.ts';
import { folderWith } from '../temporary-folder.ts';

const HEAD = 'format: fivesides-catalog/1\nunits: mm\ncurrency: EUR\n';
const rotaries = (...rows: string[]) => `${HEAD}rotaries:\n${rows.map((row) => `  - { ${row} }\n`).join('')}`;
const machines = (...rows: string[]) => `${HEAD}machines:\n${rows.map((row) => `  - { ${row} }\n`).join('')}`;

function catalogOf(...folders: string[]): Catalog {
  const read = readCatalog(folders);
  if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
  return read.value;
}

/** Problems, with the folder's own path taken out. */
function problemsOf(...folders: string[]): readonly string[] {
  const read = readCatalog(folders);
  const lines = read.ok ? [] : read.problems.map(describeProblem);
  return lines.map((line) => folders.reduce((text, folder) => text.replaceAll(join(folder, '/'), ''), line));
}

const wren = 'id: wren, name: Wren, class: trunnion';
const rowan = 'id: rowan, name: Rowan, kind: mill';

describe('the example of the contract', () => {
  const catalog = catalogOf(join(import.meta.dirname, '..', 'fixtures'));
  const [first, second] = catalog.rotaries;
  const [mill, fiveAxis, convertible] = catalog.machines;

  test('is read whole', () => {
    expect(first).toMatchObject({
      class: 'single-support',
      collet: null,
      tilt: [-20, 110],
      payload: { level: 35, tilted: 20 },
      accuracy: { rotary: 15, tilt: 15 },
      hold: { 'tilt-along-y': { keyWidth: 16, pitches: [80, 160] } },
      housing: [{ along: [-140, -70], across: [-130, 130], top: 150 }],
    });
    expect(mill).toMatchObject({
      travel: [760, 510, 510],
      noseToTable: [100, 610],
      builtIn: null,
      rotaryIncluded: null,
      features: { toolCenterPoint: 9500, tiltedWorkPlane: 'standard' },
      clearance: [
        { kind: 'lowered-table', adds: 75, price: 3200, height: 0 },
        { kind: 'column-spacer', adds: 200, price: 8600, height: 200 },
      ],
    });
    expect(fiveAxis).toMatchObject({ table: null, noseToTable: 'unknown', builtIn: { tiltAxis: 'along-x' } });
    expect(convertible).toMatchObject({ kind: 'convertible', rotaryIncluded: 'bittern', builtIn: null });
  });

  test('says of each row where it comes from', () => {
    expect(first?.from).toEqual({
      file: join(import.meta.dirname, '..', 'fixtures', 'contract.catalog.yaml'),
      line: 6,
      maker: 'Larkfield',
      document: 'invented',
      date: '2026-01-01',
    });
    expect(second?.from.line).toBe(35);
  });

  test('leaves unknown what a row lacks', () => {
    expect(second).toMatchObject({
      swing: 'unknown',
      tilt: 'unknown',
      hold: 'unknown',
      housing: null,
      collet: null,
    });
    expect(convertible).toMatchObject({ features: {}, clearance: [], throat: 'unknown', price: 'unknown' });
    expect(convertible?.table).toMatchObject({ size: ['unknown', 'unknown'], load: 'unknown' });
  });
});

describe('what is read of a folder', () => {
  test('files directly in it, by name, YAML and JSON; no answers, no folders below', () => {
    const folder = folderWith({
      'b.yaml': rotaries('id: b, name: B, class: trunnion'),
      'a.json': JSON.stringify({
        format: 'fivesides-catalog/1',
        units: 'mm',
        currency: 'EUR',
        rotaries: [{ id: 'a', name: 'A', class: 'trunnion' }],
      }),
      'c.yml': rotaries('id: c, name: C, class: trunnion'),
      'shop.answers.yaml': 'not: [even, YAML',
      'other.yaml': 'format: fivesides-answers/1',
      'notes.txt': 'nothing',
      'lessons/d.yaml': rotaries('id: d, name: D, class: trunnion'),
      'folder.yaml/e.yaml': rotaries('id: e, name: E, class: trunnion'),
    });
    expect(catalogOf(folder).rotaries.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });

  test('folders add up', () => {
    const one = folderWith({ 'a.yaml': rotaries(wren) });
    const other = folderWith({ 'a.yaml': machines(rowan) });
    expect(catalogOf(one, other)).toMatchObject({
      currency: 'EUR',
      rotaries: [{ id: 'wren' }],
      machines: [{ id: 'rowan' }],
    });
  });

  test('inches and millimeters mix, and are the identical numbers', () => {
    const inch = rotaries(`${wren}, swing: 3.5, mass: 100`).replace('units: mm', 'units: inch');
    const folder = folderWith({
      'a.yaml': inch,
      'b.yaml': rotaries('id: tit, name: Tit, class: trunnion, swing: 88.9, mass: 100 lb'),
    });
    const [first, second] = catalogOf(folder).rotaries;
    expect(first?.swing).toBe(88.9);
    expect(first?.swing).toBe(second?.swing);
    expect(first?.mass).toBe(second?.mass);
  });

  test('a folder that is empty, missing, or no folder', () => {
    const folder = folderWith({ 'notes.txt': 'nothing' });
    expect(problemsOf(folder)[0]).toMatch(/:0:0: the folder holds no catalog file, /);
    expect(problemsOf(join(folder, 'nothing'))[0]).toMatch(/:0:0: there is no such folder, /);
    expect(problemsOf(join(folder, 'notes.txt'))[0]).toMatch(
      /:0:0: this is a file, expected the folder of a catalog/,
    );
  });
});

describe('what shows only across files', () => {
  test('an id that stands twice, with both places', () => {
    const folder = folderWith({
      'a.yaml': rotaries(wren),
      'b.yaml': rotaries('id: tit, name: Tit, class: trunnion', wren),
    });
    expect(problemsOf(folder)).toEqual([
      'b.yaml:6:11: rotaries[wren].id stands at a.yaml:5:11 too, expected an id of its own for each row',
    ]);
  });

  test('prices in two currencies', () => {
    const other = (currency: string) => machines(rowan).replace('currency: EUR\n', currency);
    const mixed = folderWith({ 'a.yaml': rotaries(wren), 'b.yaml': other('currency: USD\n') });
    expect(problemsOf(mixed)).toEqual([
      'b.yaml:3:11: currency is "USD", and that of a.yaml is "EUR", expected EUR in every file: prices in two currencies cannot be compared',
    ]);
    const silent = folderWith({ 'a.yaml': rotaries(wren), 'b.yaml': other('') });
    expect(problemsOf(silent)).toHaveLength(1);
    expect(problemsOf(silent)[0]).toMatch(/^b\.yaml:1:1: currency is missing, expected EUR/);
  });

  test('a rotary that comes with a machine and is not there', () => {
    const larch = 'id: larch, name: Larch, kind: convertible, rotaryIncluded: wrenn';
    const folder = folderWith({ 'a.yaml': rotaries(wren), 'b.yaml': machines(larch) });
    expect(problemsOf(folder)).toEqual([
      'b.yaml:5:66: machines[larch].rotaryIncluded is "wrenn", which no rotary of the catalog has as its id, expected the id of a rotary',
    ]);
    const fixed = folderWith({
      'a.yaml': rotaries(wren),
      'b.yaml': machines(larch.replace('wrenn', 'wren')),
    });
    expect(problemsOf(fixed)).toEqual([]);
  });

  test('every problem of every file at once', () => {
    const folder = folderWith({
      'a.yaml': rotaries(`${wren}, swing: 0`),
      'b.yaml': 'a: [',
      'c.yaml': machines('id: oak, kind: mil'),
    });
    expect(problemsOf(folder).map((line) => line.split(' ')[0])).toEqual([
      'a.yaml:5:53:',
      'b.yaml:1:5:',
      'c.yaml:5:5:',
      'c.yaml:5:22:',
    ]);
  });
});
