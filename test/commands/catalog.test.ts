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
    expect(results[2]).toBe(`${join(folder, 'a.yaml')}:4: rotaries[wren]`);
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
});
