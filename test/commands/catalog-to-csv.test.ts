import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { catalogImport } from '../../src/commands/catalog-import.ts';
import { catalogToCsv } from '../../src/commands/catalog-to-csv.ts';
import { folderWith } from '../temporary-folder.ts';

const DEMO = join(import.meta.dirname, '..', '..', 'catalog-demo');

const listening = () => {
  const [results, remarks]: [string[], string[]] = [[], []];
  const lines = {
    result: (line: string) => results.push(line),
    remark: (line: string) => remarks.push(line),
  };
  return { lines, results, remarks };
};

function read(...folders: string[]): Catalog {
  const reading = readCatalog(folders);
  if (!reading.ok) throw new Error(reading.problems.map(({ found }) => found).join('\n'));
  return reading.value;
}

describe('a catalog as tables', () => {
  test('comes back as it was: every value of the demo, and its makers', async () => {
    const folder = folderWith({});
    const out = listening();
    expect(await catalogToCsv([DEMO], { out: 'tables' }, out.lines, folder)).toBe(0);
    const back = listening();
    for (const list of ['rotaries', 'machines']) {
      const code = await catalogImport(join('tables', `${list}.csv`), { out: 'own' }, back.lines, folder);
      expect(code, back.remarks.join('\n')).toBe(0);
    }
    const [before, after] = [read(DEMO), read(join(folder, 'own'))];
    const rowsOf = (rows: Catalog['rotaries'] | Catalog['machines']) =>
      rows.map(({ from, ...row }) => ({ ...row, maker: from.maker })).toSorted(byId);
    expect(before.rotaries.length).toBeGreaterThan(10);
    expect(rowsOf(after.rotaries)).toEqual(rowsOf(before.rotaries));
    expect(rowsOf(after.machines)).toEqual(rowsOf(before.machines));
    expect(after.currency).toBe(before.currency);
  });

  test('no text of it becomes a formula of a spreadsheet', async () => {
    const row = '{ id: wren, name: "=1+1", class: trunnion, swing: 180 }';
    const folder = folderWith({
      'own/a.yaml': `format: fivesides-catalog/1\nunits: mm\nrotaries:\n  - ${row}\n`,
    });
    const { lines } = listening();
    expect(await catalogToCsv(['own'], {}, lines, folder)).toBe(0);
    expect(readFileSync(join(folder, 'rotaries.csv'), 'utf8')).toContain("wren,'=1+1,");
  });

  test('does not replace a table, and needs a catalog', async () => {
    const folder = folderWith({ 'rotaries.csv': 'mine' });
    mkdirSync(join(folder, 'own'));
    const { lines, remarks } = listening();
    expect(await catalogToCsv(['own'], {}, lines, folder)).toBe(2);
    expect(remarks[0]).toContain('the folder holds no catalog file');
    writeFileSync(
      join(folder, 'own', 'a.yaml'),
      'format: fivesides-catalog/1\nunits: mm\nrotaries:\n  - { id: wren, name: Wren, class: trunnion }\n',
    );
    expect(await catalogToCsv(['own'], {}, lines, folder)).toBe(2);
    expect(readFileSync(join(folder, 'rotaries.csv'), 'utf8')).toBe('mine');
    expect(await catalogToCsv(['own'], { overwrite: true }, lines, folder)).toBe(0);
  });
});

const byId = (one: { readonly id: string }, other: { readonly id: string }): number =>
  one.id < other.id ? -1 : 1;
