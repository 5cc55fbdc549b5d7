import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { catalogImport } from '../../../src/commands/catalog-import.ts';
import { catalogTable } from '../../../src/importing/catalog-table.ts';
import { workbook } from '../../importing/workbook.ts';
import { heldLine, heldLines } from '../held.ts';
import type { FuzzedInput } from './input.ts';
import { SMALL_CATALOG } from './small-world.ts';

const TABLES = (['rotaries', 'machines'] as const).map((list) => catalogTable(SMALL_CATALOG, list) ?? '');
const PLAIN =
  'Name;Class;Swing (mm);Tilt (deg);Brake\nWren;trunnion;180;-30 to 110;40\nTern;trunnion;250 mm;;\n';
const SHEET = workbook({
  Rotaries: [
    ['Name', 'Class', 'Swing (mm)', 'Payload (kg)'],
    ['Wren', 'trunnion', 180, 50],
    ['Tern', 'single-axis', 250, { formula: '1+1', value: '2' }],
  ],
});
const MAP = `format: fivesides-map/1
units: mm
sheets:
  - rows: rotaries
    headings: 1
    columns:
      - { column: A, heading: Name, key: name }
      - { column: B, heading: Class, key: class }
      - { column: C, heading: Swing (mm), key: swing, unit: mm }
      - { column: E, heading: Brake, key: unknown }
`;

const folder = mkdtempSync(join(tmpdir(), 'fivesides-fuzz-'));

/** A table or its map: refused in words, or taken as a catalog that can be read, and nothing outside its folder. */
export const IMPORT: FuzzedInput = {
  name: 'map and table',
  share: 120,
  seeds: () => [...[...TABLES, PLAIN, MAP, MAP, MAP].map((text) => Buffer.from(text)), SHEET, SHEET],
  take: async (bytes, chance) => {
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder);
    const isMap = bytes.includes('headings') || bytes.includes('"sheets"');
    const table = isMap || chance.happens(0.1) ? Buffer.from(PLAIN) : bytes;
    writeFileSync(join(folder, 'table'), table);
    writeFileSync(join(folder, 'map.yaml'), isMap ? bytes : MAP);
    const said: string[] = [];
    const note = (line: string): void => void said.push(line);
    const map = isMap || chance.happens(0.3) ? { map: 'map.yaml' } : {};
    const code = await catalogImport('table', { ...map, out: 'out' }, { result: note, remark: note }, folder);
    assert.ok([0, 2, 4].includes(code), `exit code ${code}`);
    assert.ok(said.length > 0, 'nothing is said');
    for (const line of said) {
      heldLine(line);
      assert.doesNotMatch(line, /undefined|\[object/);
    }
    for (const name of readdirSync(folder, { recursive: true })) {
      const path = join(folder, String(name));
      if (/\.yaml$/.test(path) && !path.endsWith('map.yaml')) heldLines(readFileSync(path, 'utf8'));
    }
    assert.deepEqual(
      readdirSync(folder).filter((name) => !KNOWN.includes(name)),
      [],
    );
    return code === 2 ? 'refused' : 'taken';
  },
};

const KNOWN = ['map.yaml', 'out', 'table', 'table.map.yaml'];
