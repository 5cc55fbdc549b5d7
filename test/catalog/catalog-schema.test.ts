import { describe, expect, test } from 'vitest';
import { readCatalog } from '../../src/catalog/read.ts';
import { describeProblem } from '../../src/documents/problem.ts';
import { folderWith } from '../temporary-folder.ts';

const HEAD = 'format: fivesides-catalog/1\nunits: mm\n';

function problemsOf(text: string): readonly string[] {
  const read = readCatalog([folderWith({ 'c.yaml': text })]);
  return read.ok ? [] : read.problems.map((each) => describeProblem({ ...each, file: 'c.yaml' }));
}

function rotaryOf(keys: string) {
  const read = readCatalog([
    folderWith({ 'c.yaml': `${HEAD}rotaries: [{ id: wren, name: Wren, ${keys} }]` }),
  ]);
  if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
  return read.value.rotaries[0];
}

describe('one thing wrong with a rotary is one problem', () => {
  test.each([
    [
      'class: trunion',
      'rotaries[wren].class is "trunion", expected collet-indexer, single-axis, single-support or trunnion (did you mean "trunnion"?)',
    ],
    [
      'class: trunnion, tilt: [110, -20]',
      'rotaries[wren].tilt runs the wrong way, from 110 to -20, expected the smaller number first (did you mean "[-20, 110]"?)',
    ],
    ['class: trunnion, tilt: [-20, 200]', 'rotaries[wren].tilt[1] is 200, expected at most 180°'],
    ['class: trunnion, tilt: 110', 'rotaries[wren].tilt is 110, expected two numbers [lo, hi]'],
    ['class: trunnion, swing: -180', 'rotaries[wren].swing is -180, expected more than 0 mm'],
    ['class: trunnion, swing: 0', 'rotaries[wren].swing is 0, expected more than 0 mm'],
    ['class: trunnion, swing: [100, 200]', 'rotaries[wren].swing is [100, 200], expected a length'],
    ['class: trunnion, mass: 95 kgs', '(did you mean "kg"?)'],
    [
      'class: trunnion, payload: { levl: 5 }',
      'rotaries[wren].payload.levl is no key here, expected one of level, tilted (did you mean "level"?)',
    ],
    ['class: trunnion, brakeTorque: 450', 'rotaries[wren].brakeTorque is 450, expected a map'],
    ['class: trunnion, hold: { tilt-along-z: {} }', 'rotaries[wren].hold.tilt-along-z is no key here'],
    [
      'class: trunnion, hold: { axis-along-x: {} }',
      'rotaries[wren].hold.axis-along-x is no mounting of a trunnion, expected tilt-along-x',
    ],
    [
      'class: trunnion, hold: { tilt-along-x: { pitches: 80 } }',
      'rotaries[wren].hold.tilt-along-x.pitches is 80, expected a list such as [80, 160]',
    ],
    [
      'class: single-axis, hold: { tilt-along-x: {} }',
      'rotaries[wren].hold.tilt-along-x is no mounting of a single-axis, expected axis-along-x',
    ],
    [
      'class: single-axis, tilt: [0, 90]',
      'rotaries[wren].tilt is given for a single-axis, expected a class that tilts',
    ],
    [
      'class: single-axis, brakeTorque: { rotary: 300, tilt: 1200 }',
      'rotaries[wren].brakeTorque.tilt is given for a single-axis, expected a class that tilts',
    ],
    [
      'class: collet-indexer, accuracy: { rotary: 15, tilt: 20 }',
      'rotaries[wren].accuracy.tilt is given for a collet-indexer, expected a class that tilts',
    ],
    [
      'class: trunnion, housing: [{ along: [0, 5], across: [0, 5] }]',
      'rotaries[wren].housing[0].top is missing, expected a length',
    ],
    ['class: trunnion, liftingPoints: 1.5', 'rotaries[wren].liftingPoints is 1.5, expected a whole number'],
    ['class: trunnion, price: 5 EUR', 'rotaries[wren].price is "5 EUR"'],
    ['class: trunnion, colour: red', 'rotaries[wren].colour is no key here'],
  ])('%s', (keys, expected) => {
    const problems = problemsOf(`${HEAD}rotaries: [{ id: wren, name: Wren, ${keys} }]`);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(expected);
  });
});

describe('one thing wrong with a machine is one problem', () => {
  test.each([
    ['kind: five-axes', '(did you mean "five-axis"?)'],
    [
      'kind: five-axis, table: { load: 100 }',
      'machines[oak].table is given for a machine of kind five-axis, expected builtIn instead',
    ],
    ['kind: five-axis, noseToTable: [100, 600]', 'expected builtIn.reach.noseToFace instead'],
    [
      'kind: five-axis, rotaryIncluded: wren',
      'machines[oak].rotaryIncluded is given for a machine of kind five-axis',
    ],
    [
      'kind: mill, builtIn: { swing: 100 }',
      'machines[oak].builtIn is given for a machine of kind mill, expected table, or kind: five-axis',
    ],
    ['kind: mill, rotaryIncluded: wren', 'machines[oak].rotaryIncluded is given for a machine of kind mill'],
    [
      'kind: convertible, builtIn: { swing: 100 }',
      'machines[oak].builtIn is given for a machine of kind convertible',
    ],
    [
      'kind: five-axis, builtIn: { tiltAxis: along-x, leans: toward-left }',
      'machines[oak].builtIn.leans is toward-left about a tilt axis along-x, expected toward-door or toward-column',
    ],
    [
      'kind: five-axis, spindle: horizontal, builtIn: { tiltAxis: along-x, leans: toward-door }',
      'machines[oak].builtIn.leans is toward-door about a tilt axis along-x, expected downward or upward',
    ],
    [
      'kind: five-axis, builtIn: { leans: upward }',
      'machines[oak].builtIn.leans is upward under a spindle that is not horizontal, expected toward-door, toward-column, toward-left or toward-right',
    ],
    [
      'kind: five-axis, spindle: horizontal, builtIn: { leans: toward-door }',
      'machines[oak].builtIn.leans is toward-door under a spindle that is horizontal, expected downward, upward, toward-left or toward-right',
    ],
    [
      'kind: five-axis, builtIn: { tiltAxis: along-x, leans: upward }',
      'machines[oak].builtIn.leans is upward about a tilt axis along-x, expected toward-door or toward-column',
    ],
    [
      'kind: five-axis, spindle: horizontal, builtIn: { tiltAxis: along-y, leans: downward }',
      'machines[oak].builtIn.leans is downward about a tilt axis along-y, expected toward-left or toward-right',
    ],
    [
      'kind: mill, spindleToTable: [80, 600]',
      'machines[oak].spindleToTable is given without a horizontal spindle, expected spindle: horizontal',
    ],
    [
      'kind: five-axis, spindle: horizontal, spindleToTable: [80, 600]',
      'machines[oak].spindleToTable is given for a machine of kind five-axis, expected builtIn.reach.y instead',
    ],
    [
      'kind: mill, spindle: horizontal, spindleToTable: [600, 80]',
      'machines[oak].spindleToTable runs the wrong way',
    ],
    ['kind: mill, noseToTable: [610, 100]', 'machines[oak].noseToTable runs the wrong way'],
    ['kind: mill, travel: [760, 510]', 'machines[oak].travel has 2 entries, expected 3 numbers: X, Y, Z'],
    ['kind: mill, features: { spindleProb: 5 }', '(did you mean "spindleProbe"?)'],
    ['kind: mill, features: { spindleProbe: standart }', '(did you mean "standard"?)'],
    ['kind: mill, features: { spindleProbe: true }', 'machines[oak].features.spindleProbe is true'],
    [
      'kind: mill, clearance: [{ kind: spacer, adds: 5 }]',
      'machines[oak].clearance[0].kind is "spacer", expected lowered-table or column-spacer',
    ],
    ['kind: mill, clearance: [{ kind: lowered-table }]', 'machines[oak].clearance[0].adds is missing'],
    ['kind: mill, axisDrives: { fitted: -1 }', 'machines[oak].axisDrives.fitted is -1, expected at least 0'],
    [
      'kind: mill, spindleDrive: { power: 15 N }',
      'machines[oak].spindleDrive.power is "15 N" ("N" is no unit of power)',
    ],
  ])('%s', (keys, expected) => {
    const problems = problemsOf(`${HEAD}machines: [{ id: oak, name: Oak, ${keys} }]`);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(expected);
  });
});

describe('a row', () => {
  test('needs its id, its name and its class or kind, and nothing else', () => {
    expect(problemsOf(`${HEAD}rotaries: [{}]\nmachines: [{}]`)).toHaveLength(6);
    expect(
      problemsOf(
        `${HEAD}rotaries: [{ id: a, name: A, class: trunnion }]\nmachines: [{ id: a, name: A, kind: mill }]`,
      ),
    ).toEqual([]);
  });

  test.each(['none', 'unknown', 'built-in', 'a+b', 'a/b', 'a b', 'a[b]', '-a', '*x', "''"])(
    'cannot have the id %s',
    (id) => {
      expect(
        problemsOf(`${HEAD}rotaries: [{ id: "${id.replaceAll("'", '')}", name: A, class: trunnion }]`),
      ).toHaveLength(1);
    },
  );

  test('says "has none" by null or none where that can be', () => {
    expect(
      rotaryOf('class: collet-indexer, faceplate: null, tailstock: null, housing: null, collet: 25'),
    ).toMatchObject({
      faceplate: null,
      tailstock: null,
      housing: null,
      collet: 25,
      tilt: null,
    });
    expect(rotaryOf('class: collet-indexer')).toMatchObject({
      faceplate: 'unknown',
      collet: 'unknown',
      nose: 'unknown',
    });
  });

  test('a mounting that is named without numbers is possible, one that is not named is not', () => {
    expect(rotaryOf('class: trunnion, hold: { tilt-along-x: {}, tilt-along-y: }')?.hold).toEqual({
      'tilt-along-x': { keyWidth: 'unknown', pitches: 'unknown' },
      'tilt-along-y': { keyWidth: 'unknown', pitches: 'unknown' },
    });
    expect(rotaryOf('class: trunnion, hold: { tilt-along-x: {} }')?.hold).not.toHaveProperty('tilt-along-y');
  });
});

test('a file needs its format and its units', () => {
  expect(problemsOf('rotaries: []')).toEqual([
    'c.yaml:1:1: format is missing, expected fivesides-catalog/1',
    'c.yaml:1:1: units is missing, expected mm or inch',
  ]);
});
