import { expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';

test('a doubled key, a number that is none, a wrong word and a wrong size come at once, each once', () => {
  const text = [
    'format: fivesides-answers/1',
    'units: mm',
    'parts:',
    '  - name: A',
    '    name: B',
    '    shape: blok',
    '    size: [-1, 2, .nan]',
    '    material: aluminium',
  ].join('\n');
  const read = readAnswers('a.yaml', text);
  const said = read.ok ? [] : read.problems.map(describeProblem);
  expect(said.map((each) => each.split(': ')[0])).toEqual([
    'a.yaml:5:5',
    'a.yaml:6:12',
    'a.yaml:7:12',
    'a.yaml:7:19',
    'a.yaml:8:15',
  ]);
  expect(said[1]).toContain('(did you mean "block"?)');
  expect(said[4]).toContain('(did you mean "aluminum-wrought"?)');
});

const linesOf = (text: string, catalog?: Parameters<typeof readAnswers>[2]): readonly string[] => {
  const read = readAnswers('a.yaml', text, catalog);
  return read.ok ? [] : read.problems.map(describeProblem);
};

const CATALOG = { machines: [{ id: 'rowan' }, { id: 'alder' }], currency: 'EUR' };
const HEAD = 'format: fivesides-answers/1\n';

test('a mill and money that the catalog does not have come together with everything else', () => {
  const text = `${HEAD}units: mm\ncurrency: USD\nparts: [{ name: A, shape: blok }]\nshop: { machine: rowen }\n`;
  expect(linesOf(text, CATALOG)).toEqual([
    'a.yaml:3:11: currency is "USD", expected EUR, the currency of the catalog',
    'a.yaml:4:27: parts[A].shape is "blok", expected block, round or unknown (did you mean "block"?)',
    'a.yaml:5:18: shop.machine is "rowen", expected none, unknown or the id of a machine in the catalog (did you mean "rowan"?)',
  ]);
});

test('a mill and money that the catalog has, or that nobody knows, are no problem', () => {
  const ending = 'parts: [{ name: A }]\n';
  for (const line of ['shop: { machine: alder }', 'shop: { machine: none }', 'shop: { machine: unknown }'])
    expect(linesOf(`${HEAD}units: mm\ncurrency: EUR\n${line}\n${ending}`, CATALOG)).toEqual([]);
});

test('money that is none is complained of once', () => {
  const text = `${HEAD}units: mm\ncurrency: euro\nparts: [{ name: A }]\n`;
  expect(linesOf(text, CATALOG)).toHaveLength(1);
});

test('units that are named twice make no further faults of good numbers', () => {
  const text = `${HEAD}units: mm\nunits: inch\nparts: [{ name: A, size: [900, 60, -2] }]\n`;
  const said = linesOf(text);
  expect(said).toHaveLength(2);
  expect(said[0]).toContain('the key "units" stands twice');
  expect(said[1]).toContain('is -2');
});

test('a number out of range is told in both units in a file in inches', () => {
  const [said] = linesOf(`${HEAD}units: inch\nparts: [{ name: A, size: [900, 2, 2] }]\n`);
  expect(said).toContain('is 900 in (22860 mm)');
  expect(said).toMatch(/at most \d+ mm \([\d.]+ in\)/);
  const [written] = linesOf(`${HEAD}units: mm\nparts: [{ name: A, size: [900 in, 2, 2] }]\n`);
  expect(written).toContain('is "900 in" (22860 mm)');
});

test.each([
  ['1.9', false],
  ['40', true],
])('a share of %s: a percentage is proposed: %s', (fill, proposed) => {
  const [said] = linesOf(`${HEAD}units: mm\nparts: [{ name: A, fill: ${fill} }]\n`);
  expect(said?.includes('did you mean')).toBe(proposed);
});
