import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { missingValues } from '../../src/catalog/missing.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { describeProblem } from '../../src/documents/problem.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { CHECK_IDS } from '../../src/rules/checks/ids.ts';
import { decide } from '../../src/rules/decide.ts';

const FIXTURES = join(import.meta.dirname, '..', 'fixtures');

function catalogOf(...folders: string[]): Catalog {
  const read = readCatalog(folders);
  if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
  return read.value;
}

const BARE_ROWS = `format: fivesides-catalog/1
units: mm
rotaries:
  - { id: tit, name: Tit, class: collet-indexer }
  - { id: jay, name: Jay, class: single-axis }
  - { id: coot, name: Coot, class: single-support, hold: { tilt-along-x: {}, tilt-along-y: {} } }
  - { id: teal, name: Teal, class: trunnion }
machines:
  - { id: oak, name: Oak, kind: mill }
  - { id: ash, name: Ash, kind: five-axis }
  - { id: elm, name: Elm, kind: mill, spindle: horizontal }
  - { id: fir, name: Fir, kind: five-axis, spindle: horizontal }
`;

function sparseCatalog(): Catalog {
  const folder = mkdtempSync(join(tmpdir(), 'fivesides-'));
  writeFileSync(join(folder, 'rows.yaml'), BARE_ROWS);
  try {
    return catalogOf(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Work of every kind, so that every check is asked. */
function answersOfAllKinds(): Answers {
  const read = readAnswers(join(FIXTURES, 'contract.answers.yaml'));
  if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
  const [part] = read.value.answers.parts;
  if (part === undefined) throw new Error('the fixture has no part');
  const also = (name: string, changes: Partial<Part>): Part => ({ ...part, name, ...changes });
  return {
    ...read.value.answers,
    parts: [
      part,
      also('moving', { motion: 'simultaneous', approaches: ['top', { slant: 40 }, { undercut: 95 }] }),
      also('surface', { motion: 'surfaces' }),
      also('shaft', {
        shape: 'round',
        diameter: 30,
        length: 120,
        approaches: ['around'],
        holding: { by: 'collet', diameter: 0, height: 0, mass: 0 },
      }),
      also('disc', { shape: 'round', diameter: 90, length: 40, approaches: ['around', 'sides'] }),
    ],
  };
}

/** `noseToTable[0]` is missing where `noseToTable` is, and so is what `hold` would say of a mounting. */
const enclosing = (path: string): readonly string[] => [
  path,
  path.replace(/\[\d\]$/, ''),
  path.replace(/\.hold\..*/, '.hold'),
  path.replace(/\.housing\[.*/, '.housing'),
];

describe('what rows lack', () => {
  const sparse = sparseCatalog();

  test.each([
    ['a catalog of bare rows', sparse],
    ['the example of the contract', catalogOf(FIXTURES)],
  ])('names every check that the rules leave open: %s', (_, catalog) => {
    const listed = new Map(
      missingValues(catalog).flatMap(({ row, missing }) =>
        missing.map(({ path, checks }) => [`${row}.${path}`, checks]),
      ),
    );
    const { arrangements } = decide(answersOfAllKinds(), catalog, { all: true });
    const gaps = arrangements.flatMap(({ checks }) =>
      checks.flatMap(({ check, gaps: each }) =>
        each.filter(({ ask }) => ask === 'seller').map(({ path }) => ({ check, path })),
      ),
    );
    const unlisted = gaps.filter(
      ({ check, path }) => !enclosing(path).some((each) => listed.get(each)?.includes(check)),
    );
    expect(gaps.length).toBeGreaterThan(20);
    expect([...new Set(unlisted.map(({ check, path }) => `${path}: ${check}`))]).toEqual([]);
  });

  test('names no check that there is not', () => {
    const named = missingValues(sparse).flatMap(({ missing }) => missing.flatMap(({ checks }) => checks));
    expect(named.filter((each) => !CHECK_IDS.some((id) => id === each))).toEqual([]);
  });

  test('a table that does not tilt lacks nothing of a tilt', () => {
    const paths = (row: string) =>
      missingValues(sparse)
        .find((each) => each.row === row)
        ?.missing.map(({ path }) => path) ?? [];
    expect(paths('rotaries[jay]')).not.toContain('tiltMoment');
    expect(paths('rotaries[jay]')).not.toContain('accuracy.tilt');
    expect(paths('rotaries[jay]')).toContain('payload.tilted');
    expect(paths('rotaries[teal]')).toContain('tiltMoment');
    expect(paths('rotaries[tit]')).toContain('collet');
    expect(paths('rotaries[jay]')).not.toContain('collet');
    expect(paths('machines[ash]')).not.toContain('noseToTable');
    expect(paths('machines[ash]')).toContain('builtIn.reach.noseToFace');
  });

  test('only a horizontal mill lacks the heights of its spindle, and only a vertical machine a throat', () => {
    const missing = (row: string) => missingValues(sparse).find((each) => each.row === row)?.missing ?? [];
    const checks = (row: string, path: string) => missing(row).find((each) => each.path === path)?.checks;
    expect(checks('machines[elm]', 'spindleToTable')).toEqual(['travel-y', 'index-clear']);
    expect(checks('machines[elm]', 'travel[1]')).toEqual([]);
    expect(checks('machines[elm]', 'throat')).toBeUndefined();
    expect(checks('machines[oak]', 'throat')).toEqual(['column']);
    for (const row of ['oak', 'ash', 'fir'])
      expect(checks(`machines[${row}]`, 'spindleToTable')).toBeUndefined();
    expect(checks('machines[fir]', 'builtIn.tiltAxis')).toContain('tilt-moment');
    expect(checks('machines[ash]', 'builtIn.tiltAxis')).not.toContain('tilt-moment');
  });

  test('a row that lacks nothing is not listed', () => {
    expect(missingValues(catalogOf(FIXTURES)).map(({ row }) => row)).not.toContain('rotaries[wren]');
  });
});
