import { describe, expect, test } from 'vitest';
import { openWithout } from '../../src/catalog/gaps.ts';
import { imported, sheetMap } from './sheet-of.ts';

describe('headings', () => {
  test('under a title, with empty rows between', () => {
    const { rows, sheets } = imported('Our rotaries\n\nModel | Type | Swing (in)\nWren | trunnion | 10');
    expect(rows).toEqual([{ id: 'wren', name: 'Wren', class: 'trunnion', swing: 254 }]);
    expect(sheets[0]?.plan.headings).toEqual([3]);
  });

  test('merged over several columns', () => {
    const { rows } = imported(
      'Model | Kind | Travel (in) | | | Table (mm) | \n | | X | Y | Z | length | width\nRowan | VMC | 30 | 20 | 20 | 900 | 500',
    );
    expect(rows[0]).toMatchObject({ travel: [762, 508, 508], table: { size: [900, 500] } });
  });

  test('with units in a row of their own', () => {
    const { rows } = imported('Model | Type | Swing | Mass\n | | in | kg\nWren | trunnion | 10 | 95');
    expect(rows[0]).toMatchObject({ swing: 254, mass: 95 });
  });

  test('none that is understood, and no rows under them', () => {
    expect(imported('Color | Taste\nred | sweet').files).toEqual([]);
    expect(imported('Model | Type | Swing (in)').files).toEqual([]);
    expect(imported('').files).toEqual([]);
  });

  test('a note with a word of the trade is no table', () => {
    const { sheets, open, told } = imported('Height | of the doorway\n2900 | measured');
    expect(sheets[0]?.plan.headings).toEqual([]);
    expect([open, told]).toEqual([false, []]);
  });

  test('a map says in which row they stand', () => {
    const columns = [{ column: 'A', heading: 'What', keys: ['name'], unit: null }] as const;
    const map = sheetMap({ rows: 'rotaries', headings: [2], fixed: { class: 'trunnion' }, columns });
    expect(imported('mine | 3\nWhat | Swing (mm)\nWren | 180', map).rows).toEqual([
      { id: 'wren', name: 'Wren', class: 'trunnion', swing: 180 },
    ]);
  });

  test('two columns that are the same: the second is left out and asked about', () => {
    const { rows, sheets, open } = imported(
      'Model | Type | Swing (mm) | Swing (in)\nWren | trunnion | 200 | 8',
    );
    expect(rows[0]?.swing).toBe(200);
    expect(sheets[0]?.plan.columns[3]?.left).toEqual({ why: 'twin', likely: ['swing'] });
    expect(open).toBe(true);
  });

  test('that rotaries and machines share leave it open what the rows are', () => {
    const { files, open } = imported('Model | Type | Mass (kg)\nWren | trunnion | 95');
    expect(files).toEqual([]);
    expect(open).toBe(true);
  });
});

describe('what cannot be is told with its place, and left unknown', () => {
  const HEADINGS = 'Model | Type | Faceplate (mm) | Swing (mm) | Tilt range (°) | Mass (kg)';

  test('the wrong sign, a word, a range the wrong way round, two readings', () => {
    const { rows, told } = imported(
      `${HEADINGS}\nWren | trunnion | -4 | large | 110..-20 | 1,500\nRobin | trunnion | 0 | 12 kg | 90 | 95`,
    );
    expect(rows).toEqual([
      { id: 'wren', name: 'Wren', class: 'trunnion' },
      { id: 'robin', name: 'Robin', class: 'trunnion', mass: 95 },
    ]);
    expect(told.map((line) => line.split(' ')[0])).toEqual(['D2', 'E2', 'F2', 'C2', 'D3', 'E3', 'C3']);
    expect(told[3]).toBe('C2 faceplate is -4');
  });

  test('a tilt of a table that does not tilt', () => {
    const { rows, told } = imported(`${HEADINGS}\nDipper | single axis | 125 | 200 | -20..110 | 42`);
    expect(rows[0]).toEqual({
      id: 'dipper',
      name: 'Dipper',
      class: 'single-axis',
      faceplate: 125,
      swing: 200,
      mass: 42,
    });
    expect(told).toEqual(['E2 tilt is given for a single-axis']);
  });

  test('a brake of a tilt axis that is not there', () => {
    const { rows, told } = imported(
      'Model | Type | Brake torque rotary (N·m) | Brake torque tilt (N·m)\nDipper | 4th axis | 300 | 1200',
    );
    expect(rows[0]?.brakeTorque).toEqual({ rotary: 300 });
    expect(told).toEqual(['D2 brakeTorque.tilt is given for a single-axis']);
  });

  test('a row without a name, a row without a class, a row that is there twice', () => {
    const { rows, told } = imported(
      `${HEADINGS}\n | trunnion | 125\nWren | | 125\nRobin | trunnion | 125\nRobin | trunnion | 125\nRobin | trunnion | 160`,
    );
    expect(rows.map(({ id }) => id)).toEqual(['robin', 'robin-2']);
    expect(told).toEqual([
      'row 2 the row has no name',
      'row 3 nothing says the class of the row',
      'row 5 robin says the same as row 4',
      'row 6 robin is called like row 4, with other values',
    ]);
  });

  test('one end of a range', () => {
    const { rows, told } = imported(
      'Model | Kind | X travel (mm) | Nose to table min (mm) | Nose to table max (mm)\nRowan | mill | 760 | 100 | 610\nAlder | mill | 760 | 100 | ',
    );
    expect(rows[0]?.noseToTable).toEqual([100, 610]);
    expect(rows[1]?.noseToTable).toBe(undefined);
    expect(told).toEqual(['D3 only one end of noseToTable is known']);
  });

  test('numbers without a unit: the column, not each cell', () => {
    const { rows, told, sheets, open } = imported(
      'Model | Type | Swing | Faceplate (mm)\nWren | trunnion | 200 | 125\nRobin | trunnion | 8 in | 125',
    );
    expect(rows.map(({ swing }) => swing)).toEqual([undefined, 203.2]);
    expect(told).toEqual([]);
    expect([...(sheets[0]?.withoutUnit.values() ?? [])]).toEqual([1]);
    expect(open).toBe(true);
  });
});

describe('what a catalog takes for none is not invented', () => {
  test('features of which nothing is said are unknown, those that are denied are not there', () => {
    const { rows } = imported(
      'Model | Kind | X travel (mm) | TCP | Probe | Look-ahead\nRowan | mill | 760 | standard | no | ',
    );
    expect(rows[0]?.features).toEqual({
      toolCenterPoint: 'standard',
      rotatingWorkOffset: 'unknown',
      tiltedWorkPlane: 'unknown',
      toolSetter: 'unknown',
      lookAhead: 'unknown',
    });
  });

  test('a kind that says which way the spindle points says both, and a column for it counts before', () => {
    const { rows, gaps } = imported(
      'Model | Style | X travel (mm) | Spindle\nRowan | HMC | 760 | \nAlder | VMC | 760 | \nLarch | VMC | 760 | h\nElder | mill | 760 | ',
    );
    expect(rows.map(({ kind, spindle }) => [kind, spindle])).toEqual([
      ['mill', 'horizontal'],
      ['mill', 'vertical'],
      ['mill', 'horizontal'],
      ['mill', undefined],
    ]);
    const [first] = gaps;
    expect(first).toMatchObject({ path: 'spindle', rows: 1, of: 4 });
    expect(first === undefined ? '' : openWithout(first)).toBe(
      'judged as vertical meanwhile, whatever it is',
    );
  });

  test('how it is held is known only where each way is said', () => {
    const { rows, told } = imported(
      'Model | Type | Swing (mm) | Tilt along X | Key width tilt along X (mm) | Tilt along Y | Key width tilt along Y (mm)\nWren | trunnion | 180 | yes | 16 | no | \nRobin | trunnion | 180 | yes | 16 | | \nSiskin | trunnion | 180 | no | | none | ',
    );
    expect(rows.map(({ hold }) => hold)).toEqual([{ 'tilt-along-x': { keyWidth: 16 } }, undefined, {}]);
    expect(told).toEqual(['row 3 nothing says whether it can be held tilt-along-y']);
  });

  test('a rotary that comes with a machine has to be there', () => {
    const { rows, told } = imported(
      'Model | Kind | X travel (mm) | Rotary included\nLarch | convertible | 760 | Bittern',
    );
    expect(rows[0]).not.toHaveProperty('rotaryIncluded');
    expect(told).toEqual(['D2 larch names "Bittern" as the rotary that comes with it']);
  });
});

test('prices in two currencies are asked about, unless one is left out', () => {
  const lines =
    'Model | Type | Swing (mm) | Price (EUR) | Tailstock price (USD)\nWren | trunnion | 180 | 28500 | 900';
  expect(imported(lines)).toMatchObject({ currency: 'unknown', currencies: ['EUR', 'USD'], open: true });
  const columns = [{ column: 'E', heading: 'Tailstock price (USD)', keys: 'skip', unit: null }] as const;
  const map = sheetMap({ rows: 'rotaries', columns });
  expect(imported(lines, map)).toMatchObject({ currency: 'EUR', currencies: [], open: false });
});

describe('where a value comes from', () => {
  test('stands behind it, and cannot get out of its comment', () => {
    const { files } = imported(
      'Model | Type | Swing (in) | Travel\nWren: "x" # y | trunnion | 10\nkind',
      sheetMap({ rows: 'rotaries' }),
    );
    const [file] = files;
    expect(file?.text).toContain('    swing: 254 # C2: 10 in\n');
    expect(file?.text).toContain('name: "Wren: \\"x\\" # y" # A2: Wren: "x" # y\n');
    expect(file?.text).toContain('source: { document: "list.csv" }\n');
  });

  test('each maker has a file, and its source names it', () => {
    const { files } = imported(
      'Model | Maker | Type | Swing (mm)\nWren | Larkfield | trunnion | 180\nRobin | Tarnholt | trunnion | 200',
    );
    expect(files.map(({ name }) => name)).toEqual(['rotaries-larkfield.yaml', 'rotaries-tarnholt.yaml']);
    expect(files[1]?.text).toContain('source: { maker: Tarnholt, document: "list.csv" }');
  });
});

test('what rows lack, with the checks that stay open', () => {
  const { gaps } = imported('Model | Type | Swing (mm)\nWren | trunnion | 180\nRobin | trunnion | ?');
  expect(gaps.find(({ path }) => path === 'swing')).toEqual({
    list: 'rotaries',
    path: 'swing',
    rows: 1,
    of: 2,
    checks: ['swing', 'faceplate'],
  });
});
