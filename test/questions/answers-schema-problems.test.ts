import { describe, expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';

const HEAD = 'format: fivesides-answers/1\nunits: mm\n';

function problemsOf(text: string): readonly string[] {
  const read = readAnswers('a.yaml', text);
  return read.ok ? [] : read.problems.map(describeProblem);
}

/** Problems of a file with one part that has these keys, and this at the top. */
const partProblems = (keys: string, top = '') =>
  problemsOf(`${HEAD}${top}parts:\n  - { name: A, ${keys} }\n`);

describe('one thing wrong is one problem, at its place, with what to write instead', () => {
  test.each([
    ['shape: cube', 'parts[A].shape is "cube", expected block, round or unknown'],
    ['shap: block', /^a\.yaml:4:16: parts\[A\]\.shap is no key here, .*\(did you mean "shape"\?\)$/],
    ['size: [90, -60, 55]', 'a.yaml:4:27: parts[A].size[1] is -60, expected more than 0 mm'],
    ['size: [90, 60]', 'parts[A].size has 2 entries, expected 3 numbers: length, width, height'],
    ['size: [90, 60, 0]', 'parts[A].size[2] is 0, expected more than 0 mm'],
    ['mass: 0', 'parts[A].mass is 0, expected more than 0 kg'],
    ['mass: 3 lbz', '(did you mean "lb"?)'],
    [
      'mass: "1,500 kg"',
      'parts[A].mass is "1,500 kg", which can be 1500 kg or 1.5 kg, write 1500 kg or 1.5 kg',
    ],
    ['mass: uknown', '(did you mean "unknown"?)'],
    ['mass: true', 'parts[A].mass is true, expected a mass in kg, g, t or lb'],
    ['mass: { kg: 1 }', 'parts[A].mass is a map, expected a mass'],
    [
      'tolerance: [0.1, 0.05]',
      'runs the wrong way, from 0.1 to 0.05, expected the smaller number first (did you mean "[0.05, 0.1]"?)',
    ],
    ['tolerance: [0.1, unknown]', 'a.yaml:4:33: parts[A].tolerance[1] is "unknown"'],
    ['fill: 85', 'parts[A].fill is 85, expected at most 1 (did you mean "85 %"?)'],
    ['depthTop: -1', 'parts[A].depthTop is -1, expected at least 0 mm'],
    ['eccentricity: -5', 'parts[A].eccentricity is -5, expected at least 0 mm'],
    [
      'approaches: [top, sids]',
      'parts[A].approaches[1] is "sids", expected top, sides, around, {slant: 35} or {undercut: 100} (did you mean "sides"?)',
    ],
    ['approaches: []', 'parts[A].approaches has 0 entries, expected at least 1'],
    ['approaches: top', 'parts[A].approaches is "top", expected a list such as [top, sides]'],
    ['approaches: [top, top]', 'parts[A].approaches[1] stands twice'],
    ['approaches: [{ slant: 0 }]', 'parts[A].approaches[0].slant is 0, expected more than 0°'],
    ['approaches: [{ slant: 90 }]', 'parts[A].approaches[0].slant is 90, expected less than 90°'],
    ['approaches: [{ undercut: 90 }]', 'parts[A].approaches[0].undercut is 90, expected more than 90°'],
    ['approaches: [{ undercut: 181 }]', 'parts[A].approaches[0].undercut is 181, expected at most 180°'],
    ['approaches: [{ slant: 10, undercut: 100 }]', 'parts[A].approaches[0] has two angles'],
    ['approaches: [{}]', 'parts[A].approaches[0] is empty'],
    ['bottom: no', 'parts[A].bottom is "no", expected true, false or unknown (did you mean "false"?)'],
    ['must: 1', 'parts[A].must is 1, expected true or false'],
    [
      'cut: hevy',
      'parts[A].cut is "hevy", expected light, medium, heavy, or the numbers of the cut (did you mean "heavy"?)',
    ],
    [
      'cut: { diameter: 10, ae: 20 }',
      'parts[A].cut.ae is wider than the cutter, expected at most its diameter',
    ],
    ['cut: { teeth: 2.5 }', 'parts[A].cut.teeth is 2.5, expected a whole number'],
    [
      'drill: { fed: 0.2 }',
      'parts[A].drill.fed is no key here, expected one of diameter, feed, offset (did you mean "feed"?)',
    ],
    ['material: steel', 'parts[A].material is "steel", expected steel-carbon'],
    ['yearly: 5', 'parts[A].yearly is 5, expected a map: keys with values'],
    ['yearly: { quantity: -1 }', 'parts[A].yearly.quantity is -1, expected at least 0'],
    [
      'shape: round, size: [1, 2, 3]',
      'a.yaml:4:30: parts[A].size is given for a round part, expected diameter and length',
    ],
    [
      'shape: block, diameter: 5',
      'parts[A].diameter is given for a block part, expected size: [length, width, height]',
    ],
    ['shape: block, stands: lying', 'parts[A].stands is lying for a block'],
  ])('%s', (keys, expected) => {
    const problems = partProblems(keys);
    expect(problems).toHaveLength(1);
    if (typeof expected === 'string') expect(problems[0]).toContain(expected);
    else expect(problems[0]).toMatch(expected);
  });

  test.each([
    ['tools: { shortest: 90, longest: 80 }', 'tools.longest is less than the shortest'],
    ['tools: { longest: 0 }', 'tools.longest is 0, expected more than 0 mm'],
    ['shop: { bay: [4200] }', 'shop.bay has one entry, expected 2 numbers'],
    ['shop: { power: { phases: 4 } }', 'shop.power.phases is 4, expected at most 3'],
    [
      'shop: { lifting: [{ capacity: 5 }] }',
      'shop.lifting[0].by is missing, expected hand, hoist or forklift',
    ],
    ['shop: { lifting: hand }', 'shop.lifting is "hand"'],
    ['work: { threeAxisShare: 40 }', 'work.threeAxisShare is 40, expected at most 1 (did you mean "40 %"?)'],
    ['money: { budget: 1e30 }', 'money.budget is 1e+30, expected at most 1000000000'],
    ['money: { budget: -5 }', 'money.budget is -5, expected at least 0'],
    ['money: { budget: 5 EUR }', 'money.budget is "5 EUR"'],
    ['currency: eur', 'currency is "eur", expected three capital letters such as EUR'],
    ['matters: [coverage, coverage]', 'a.yaml:3:21: matters[1] ("coverage") stands twice'],
    ['matters: [pric]', 'matters[0] is "pric", expected coverage'],
    [
      'assume: { brakeSaftey: 2 }',
      'assume.brakeSaftey is no key here, expected a key that this map has (did you mean "brakeSafety"?)',
    ],
    ['assume: { band: 7 }', 'assume.band is 7, expected at most 1'],
    ['assume: { band: unknown }', 'assume.band is "unknown"'],
    ['assume: { weeks: [40, 48] }', 'assume.weeks is [40, 48], expected a number'],
    ['control: { cam: 3axis }', 'control.cam is "3axis", expected none, threeAxis, fiveAxis or unknown'],
    ['unit: mm', 'a.yaml:3:1: unit is no key here'],
  ])('%s', (top, expected) => {
    const problems = partProblems('shape: unknown', `${top}\n`);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(expected);
  });
});

describe('the file as a whole', () => {
  test('needs its format, its units and its parts', () => {
    expect(problemsOf('{}')).toEqual([
      'a.yaml:1:1: format is missing, expected fivesides-answers/1',
      'a.yaml:1:1: units is missing, expected mm or inch',
      'a.yaml:1:1: parts is missing, expected a list',
    ]);
    expect(problemsOf(`${HEAD}parts: []`)).toEqual(['a.yaml:3:8: parts has 0 entries, expected at least 1']);
    expect(problemsOf(`${HEAD}parts:`)).toHaveLength(1);
    expect(problemsOf('[1]')).toEqual(['a.yaml:1:1: the file is [1], expected a map: keys with values']);
    expect(problemsOf('just words')).toEqual([
      'a.yaml:1:1: the file is "just words", expected a map: keys with values',
    ]);
  });

  test('has at most 200 parts', () => {
    const parts = (count: number) =>
      Array.from({ length: count }, (_, index) => `  - name: P${index}`).join('\n');
    expect(problemsOf(`${HEAD}parts:\n${parts(200)}`)).toEqual([]);
    expect(problemsOf(`${HEAD}parts:\n${parts(201)}`)).toEqual([
      'a.yaml:4:3: parts has 201 entries, expected at most 200',
    ]);
  });

  test('has names of its own for its parts, capitals aside', () => {
    expect(problemsOf(`${HEAD}parts:\n  - name: Hinge\n  - name: hinge\n  - name: Hinge`)).toEqual([
      'a.yaml:5:11: parts[hinge].name differs from "Hinge" in capitals only, expected a name of its own for each part',
      'a.yaml:6:11: parts[Hinge].name is the name of another part too, expected a name of its own for each part',
    ]);
    expect(problemsOf(`${HEAD}parts:\n  - name: ''\n  - { shape: block }\n  - name: 12`)).toEqual([
      'a.yaml:4:11: parts[0].name is an empty text, expected the name of the part',
      'a.yaml:5:5: parts[1].name is missing, expected a text: the name of the part',
      'a.yaml:6:11: parts[2].name is 12, expected a text, in quotes: the name of the part',
    ]);
  });

  test('tells everything at once, in the order of its lines', () => {
    const lines = problemsOf(`format: fivesides-answers/2
units: cm
parts:
  - { name: A, shape: cube, mass: 0, holding: [1] }
  - { name: a, shape: round, size: [1, 2, 3], cut: { ae: 0 } }
money: { interest: 6 }
`).map((each) => each.split(' ').slice(0, 2).join(' '));
    expect(lines).toEqual([
      'a.yaml:1:9: format',
      'a.yaml:2:8: units',
      'a.yaml:4:23: parts[A].shape',
      'a.yaml:4:35: parts[A].mass',
      'a.yaml:4:47: parts[A].holding',
      'a.yaml:5:13: parts[a].name',
      'a.yaml:5:30: parts[a].size',
      'a.yaml:5:58: parts[a].cut.ae',
      'a.yaml:6:20: money.interest',
    ]);
  });

  test('cannot steer the terminal through what it holds', () => {
    const [problem] = problemsOf(`${HEAD}parts: [{ name: "A\\e[2J", shape: "\\u202ecube" }]`);
    expect(problem).not.toMatch(/[\p{Cc}\u202e]/u);
  });
});
