import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { catalogCheck } from '../../src/commands/catalog.ts';
import { folderWith } from '../temporary-folder.ts';

async function check(...folders: string[]) {
  const results: string[] = [];
  const remarks: string[] = [];
  const code = await catalogCheck(folders, {
    result: (line) => results.push(line),
    remark: (line) => remarks.push(line),
  });
  return { code, results, remarks };
}

describe('checking a catalog', () => {
  test('finds nothing wrong with the demo, and says what it holds', async () => {
    const { code, results, remarks } = await check(join(import.meta.dirname, '..', '..', 'catalog-demo'));
    expect(code).toBe(0);
    expect(remarks).toEqual([]);
    expect(results[0]).toMatch(/^\d+ rotaries and \d+ machines in \d+ files: no problems\.$/);
  });

  test('says what a row lacks and which checks that leaves open', async () => {
    const folder = folderWith({
      'a.yaml':
        'format: fivesides-catalog/1\nunits: mm\nrotaries:\n  - { id: wren, name: Wren, class: trunnion }\n',
    });
    const { code, results } = await check(folder);
    expect(code).toBe(0);
    expect(results[0]).toBe('1 rotary and 0 machines in 1 file: no problems.');
    expect(results[2]).toBe('Values that a row lacks, and the checks that stay open without them:');
    expect(results[3]).toBe(`${join(folder, 'a.yaml')}:4: rotaries[wren]`);
    expect(results).toContain('  swing: swing, faceplate');
    expect(results).toContain('  tiltMoment: tilt-moment');
    expect(results).toContain('  height: hook-height');
  });

  test('gives each problem a line, prints nothing else, and ends with 2', async () => {
    const folder = folderWith({
      'a.yaml':
        'format: fivesides-catalog/1\nunits: mm\nrotaries:\n  - { id: wren, name: Wren, clas: trunnion, swing: -1 }\n',
    });
    const { code, results, remarks } = await check(folder);
    expect(code).toBe(2);
    expect(results).toEqual([]);
    expect(
      remarks.map((line) => line.replace(join(folder, '/'), '').split(' ').slice(0, 2).join(' ')),
    ).toEqual([
      'a.yaml:4:5: rotaries[wren].class',
      'a.yaml:4:29: rotaries[wren].clas',
      'a.yaml:4:52: rotaries[wren].swing',
    ]);
  });

  test('puts first what leaves most checks open, over all rows, in lines of at most 80 columns', async () => {
    const folder = folderWith({
      'a.yaml': `format: fivesides-catalog/1
units: mm
rotaries:
  - { id: wren, name: Wren, class: trunnion, swing: 200, centerHeight: 150 }
  - { id: coot, name: Coot, class: trunnion, centerHeight: 150, tilt: [-20, 110] }
`,
    });
    const { results } = await check(folder);
    const title = results.indexOf('What to find out first: what rows lack, and the checks that stay open:');
    expect(results[title + 1]).toMatch(/^ {2}faceOffset, in 2 of 2 rotaries: /);
    expect(results).toContain('  swing, in 1 of 2 rotaries: swing, faceplate');
    const rows = results.slice(results.indexOf('Row by row, besides what all of them lack:') + 1);
    expect(rows).toEqual([
      expect.stringMatching(/a\.yaml:4: rotaries\[wren\]$/),
      expect.stringMatching(/^ {2}.*tilt/),
      expect.stringMatching(/a\.yaml:5: rotaries\[coot\]$/),
      '  swing',
    ]);
    expect(results.filter((line) => line.startsWith(' ') && line.length > 80)).toEqual([]);
  });
});

const ROTARY =
  'class: trunnion, faceplate: 125, swing: 180, centerHeight: 150, base: { along: 420, across: 260 }, height: 300, mass: 95, payload: { level: 35, tilted: 20 }';
const MILL =
  'kind: mill, travel: [760, 510, 510], table: { size: [915, 460], load: 680 }, noseToTable: [100, 610], axisDrives: { fitted: 0, offered: 2 }';

describe('what can be used and is told all the same', () => {
  const problems = async (text: string) => {
    const folder = folderWith({ 'a.yaml': `format: fivesides-catalog/1\n${text}` });
    const { code, results, remarks } = await check(folder);
    const own = results.filter((line) => line.startsWith(join(folder, 'a.yaml:')));
    const told = own.filter((line) => /a\.yaml:\d+:\d+: /.test(line));
    return { code, remarks, told: told.map((line) => line.replace(join(folder, '/'), '')) };
  };

  test('a value, with its place, what stands against it, why, and what was perhaps meant', async () => {
    const { code, remarks, told } = await problems(`units: inch
machines:
  - { id: oak, name: Oak, ${MILL.replace('travel: [760, 510, 510]', 'travel: [30, 20, 20]').replace('noseToTable: [100, 610]', 'noseToTable: [4, 26]').replace('[915, 460]', '[36, 18]')} }
rotaries: [{ id: wren, name: Wren, class: trunnion, air: { bar: 80 } }]
`);
    expect([code, remarks]).toEqual([0, []]);
    expect(told).toEqual([
      'a.yaml:4:112: machines[oak].noseToTable spans 22 in (558.8 mm), and the Z travel is 20 in (508 mm), expected ends that are as far apart as the travel: nose to table at the top less the same at the bottom is the Z travel (geometry)',
      'a.yaml:5:65: rotaries[wren].air.bar is 1160 psi (80 bar), expected between 2 and 16 bar: compressed air of a shop is between 2 and 16 bar (common practice, no source) (did you mean "80 psi"?)',
    ]);
  });

  test.each([
    ['inches in a file in mm', 'mm', 'seems to be in inches, read as mm', [5, 7, 6, 16.5, 10.2, 12]],
    ['mm in a file in inches', 'inch', 'seems to be in mm, read as inches', [125, 180, 150, 420, 260, 300]],
  ])('%s is told once for the row', async (_, units, words, sizes) => {
    const [faceplate, swing, center, along, across, height] = sizes;
    const { told } = await problems(`units: ${units}
rotaries:
  - { id: wren, name: Wren, class: trunnion, faceplate: ${faceplate}, swing: ${swing}, centerHeight: ${center}, base: { along: ${along}, across: ${across} }, height: ${height} }
`);
    expect(told).toHaveLength(1);
    expect(told[0]).toContain('a.yaml:4:5: rotaries[wren] has 6 of 6 lengths that would be right');
    expect(told[0]).toContain(words);
  });

  test('the same values under two names, and one name twice', async () => {
    const { code, told } = await problems(`units: mm
rotaries:
  - { id: wren, name: Wren, ${ROTARY} }
  - { id: wren-2, name: Wren two, ${ROTARY} }
  - { id: coot, name: " WREN", class: single-axis }
`);
    expect(code).toBe(0);
    expect(told.map((line) => line.replace(/\(\S*a\.yaml/, '(a.yaml'))).toEqual([
      'a.yaml:5:5: rotaries[wren-2] has the same values as rotaries[wren] (a.yaml:4), expected one row for one thing to buy',
      'a.yaml:6:23: rotaries[coot].name is also that of rotaries[wren] (a.yaml:4), expected a name of its own: reports call rows by it',
    ]);
  });

  test('rows that nothing goes with, and keys that fit no slot', async () => {
    const { told } = await problems(`units: mm
rotaries:
  - { id: wren, name: Wren, ${ROTARY} }
  - { id: emu, name: Emu, class: single-axis, mass: 900, hold: { axis-along-x: { keyWidth: 28 } } }
machines:
  - { id: oak, name: Oak, ${MILL.replace('load: 680', 'load: 680, slots: { width: 18 }')} }
  - { id: ash, name: Ash, ${MILL.replace('offered: 2', 'offered: 0').replace('load: 680', 'load: 90, slots: { width: 14 }')} }
  - { id: yew, name: Yew, kind: five-axis }
`);
    expect(told).toEqual([
      'a.yaml:5:5: rotaries[emu] can be used on no machine of the catalog: it weighs 900 kg, and the strongest table carries 680 kg, expected a row that something goes with, or one less',
      'a.yaml:5:64: rotaries[emu].hold has keys of 28 mm, and the slots of the machines are 14 mm, 18 mm wide, expected the width of a slot, or an adapter plate each time',
      'a.yaml:8:5: machines[ash] can use no rotary of the catalog: it carries 90 kg on its table, less than any rotary weighs, expected a row that something goes with, or one less',
    ]);
  });
});
