import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readCatalog } from '../../src/catalog/read.ts';
import { catalogImport } from '../../src/commands/catalog-import.ts';
import { marketWorkbook } from '../importing/market.ts';
import { PLANTED } from '../importing/planted-mistakes.ts';
import { folderWith } from '../temporary-folder.ts';

test('700 rows in mixed units with gaps: each of 25 planted mistakes is told with its place, and nothing else', async () => {
  const folder = folderWith({});
  const { bytes, places } = marketWorkbook();
  writeFileSync(join(folder, 'market.xlsx'), bytes);
  const [results, remarks]: [string[], string[]] = [[], []];
  const lines = {
    result: (line: string) => results.push(line),
    remark: (line: string) => remarks.push(line),
  };
  expect(await catalogImport('market.xlsx', { out: 'market' }, lines, folder)).toBe(4);
  expect(PLANTED).toHaveLength(25);
  const told = remarks.map((line) => /^market\.xlsx: (sheet \w+, (?:cell|row) \w+)/.exec(line)?.[1] ?? line);
  expect([...new Set(told)].toSorted()).toEqual(places.toSorted());
  const catalog = readCatalog([join(folder, 'market')]);
  // without a name, without a class, twice; without a kind
  expect(catalog.ok && [catalog.value.rotaries.length, catalog.value.machines.length]).toEqual([297, 399]);
}, 60_000);
