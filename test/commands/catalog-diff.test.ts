import { join } from 'node:path';
import { expect, test } from 'vitest';
import { catalogDiffCommand } from '../../src/commands/catalog-diff.ts';
import { DEMO_FOLDER } from '../catalog-demo/demo.ts';
import { folderWith } from '../temporary-folder.ts';

type Options = NonNullable<Parameters<typeof catalogDiffCommand>[1]>;

async function diff(cwd: string, before: string, after: string, options: Options = {}) {
  const [results, remarks]: [string[], string[]] = [[], []];
  const lines = {
    result: (line: string) => results.push(line),
    remark: (line: string) => remarks.push(line),
  };
  const code = await catalogDiffCommand([before, after], options, lines, cwd);
  return { code, results, remarks };
}

const BEFORE = `format: fivesides-catalog/1
units: mm
currency: EUR
source: { maker: Larkfield, document: invented, date: 2026-01-01 }
rotaries:
  - { id: wren, name: Wren, class: trunnion, swing: 508, payload: { level: 35 }, price: 28500, hold: { tilt-along-x: { keyWidth: 18, pitches: [80] } } }
  - { id: coot, name: Coot, class: trunnion, swing: 300 }
  - { id: emu, name: Emu, class: single-axis, swing: 200, mass: 80 }
machines:
  - { id: oak, name: Oak, kind: mill, travel: [760, 510, unknown], features: { spindleProbe: 6800, lookAhead: standard }, clearance: [{ kind: lowered-table, adds: 75, price: 3200 }] }
`;
const AFTER = `format: fivesides-catalog/1
units: inch
currency: EUR
source: { maker: Larkfield, document: invented, date: 2026-06-01 }
rotaries:
  - { id: wren, name: Wren, class: trunnion, swing: 20, tilt: [-20, 110], payload: { level: 30 kg, tilted: 20 kg }, price: 29900, hold: { tilt-along-x: { keyWidth: 18 mm, pitches: [80 mm, 160 mm] } } }
  - { id: kite, name: Kite, class: single-support }
  - { id: emu-2, name: Emu two, class: single-axis, swing: 200 mm, mass: 80 kg }
machines:
  - { id: oak, name: Oak, kind: mill, travel: [760 mm, 510 mm, 20], features: { lookAhead: 3900, toolSetter: standard }, clearance: [{ kind: lowered-table, adds: 3, price: 3200 }] }
`;

test('added, removed and changed rows, and each value with its unit before and after', async () => {
  const folder = folderWith({ 'a/r.yaml': BEFORE, 'b/other-name.yaml': AFTER });
  const { code, results, remarks } = await diff(folder, 'a', 'b');
  expect([code, remarks]).toEqual([0, []]);
  expect(results).toEqual([
    'From a to b: 2 added, 2 removed, 2 changed.',
    'changed rotaries[wren]',
    '  tilt[0]: unknown → -20°',
    '  tilt[1]: unknown → 110°',
    '  payload.level: 35 kg → 30 kg',
    '  payload.tilted: unknown → 20 kg',
    '  hold.tilt-along-x.pitches[1]: none → 160 mm',
    '  price: 28500 EUR → 29900 EUR',
    '  source.date: 2026-01-01 → 2026-06-01',
    'added rotaries[kite]',
    'added rotaries[emu-2] (with the values of emu, which is gone)',
    'removed rotaries[coot]',
    'removed rotaries[emu]',
    'changed machines[oak]',
    '  travel[2]: unknown → 508 mm',
    '  features.toolSetter: not offered → standard',
    '  features.lookAhead: standard → 3900 EUR',
    '  clearance[0].adds: 75 mm → 76.2 mm',
    '  features.spindleProbe: 6800 EUR → not offered',
    '  source.date: 2026-01-01 → 2026-06-01',
  ]);
});

test('in inches, with millimeters beside', async () => {
  const folder = folderWith({ 'a/r.yaml': BEFORE, 'b/r.yaml': AFTER });
  const { results } = await diff(folder, 'a', 'b', { units: 'inch' });
  expect(results).toContain('  travel[2]: unknown → 20 in (508 mm)');
});

test('as JSON, in base units', async () => {
  const folder = folderWith({ 'a/r.yaml': BEFORE, 'b/r.yaml': AFTER });
  const { results } = await diff(folder, 'a', 'b', { format: 'json' });
  const { format, rows } = JSON.parse(results.join('\n'));
  expect(format).toBe('fivesides-catalog-diff/1');
  expect(rows[0]).toMatchObject({ list: 'rotaries', id: 'wren', change: 'changed' });
  expect(rows[0].values).toContainEqual({ path: 'payload.tilted', before: 'unknown', after: 20 });
  expect(rows[2]).toEqual({ list: 'rotaries', id: 'emu-2', change: 'added', values: [], renamedFrom: 'emu' });
});

test('the same values in other units, in other files and in another order are no change', async () => {
  const metric = BEFORE.replace(/machines:[\s\S]*/, '');
  const inch = metric
    .replace('units: mm', 'units: inch')
    .replace('swing: 508', 'swing: 20')
    .replace('level: 35', 'level: 35 kg')
    .replace('keyWidth: 18, pitches: [80]', 'keyWidth: 18 mm, pitches: [80 mm]')
    .replace('swing: 300', 'swing: 300 mm')
    .replace('swing: 200, mass: 80', 'swing: 200 mm, mass: 80 kg');
  const folder = folderWith({ 'a/r.yaml': metric, 'b/z.yaml': inch });
  expect((await diff(folder, 'a', 'b')).results).toEqual(['a and b hold the same rows and values.']);
});

test('the demo is the same as itself', async () => {
  const { code, results } = await diff('/', DEMO_FOLDER, DEMO_FOLDER);
  expect([code, results.length]).toEqual([0, 1]);
});

test('a catalog that cannot be read is told, with 2', async () => {
  const folder = folderWith({ 'a/r.yaml': BEFORE, 'b/r.yaml': BEFORE.replace('trunnion', 'trunion') });
  const { code, results, remarks } = await diff(folder, 'a', 'b');
  expect([code, results]).toEqual([2, []]);
  expect(remarks.map((line) => line.replace(join(folder, '/'), ''))).toEqual([
    'b/r.yaml:6:36: rotaries[wren].class is "trunion", expected collet-indexer, single-axis, single-support or trunnion (did you mean "trunnion"?)',
  ]);
});
