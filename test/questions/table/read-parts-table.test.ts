import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPartsTable } from '../../../src/questions/table/read-parts-table.ts';

const MM = { units: 'mm', offer: { machines: [] } } as const;
const read = (text: string, context: Parameters<typeof readPartsTable>[1] = MM) =>
  readPartsTable(text, context);

/** Of each part, its answers by the id of their question. */
const answersIn = (text: string, context: Parameters<typeof readPartsTable>[1] = MM) =>
  read(text, context).parts.map(({ answers }) =>
    Object.fromEntries(answers.map(({ question, value }) => [question.id, value])),
  );

const places = (text: string) => read(text).problems.map(({ row, heading }) => [row, heading]);

describe('a table of parts', () => {
  const HINGE = { name: 'Hinge', material: 'brass', mass: 0.8 };

  test.each([
    ['tabs', 'Name\tMaterial\tMass\nHinge\tbrass\t0,8 kg'],
    ['semicolons', 'Name;Material;Mass\r\nHinge;brass;0,8'],
    ['commas', 'Name,Material,Mass\nHinge,brass,"0,8"\n'],
    ['a mark of byte order', '\ufeffName;Material;Mass\nHinge;brass;0.8'],
    ['returns that came twice', 'Name\tMaterial\tMass\r\rHinge\tbrass\t0,8 kg\r\r'],
    ['empty lines', '\n\nName;Material;Mass\n;;\nHinge;brass;0.8\n\n'],
  ])('is read with %s', (_, text) => {
    expect(answersIn(text)).toEqual([HINGE]);
    expect(read(text).problems).toEqual([]);
  });

  test.each(['LENGTH (mm)', 'length [mm]', ' Length,  mm', 'Length mm', 'length'])(
    'has a column for the length headed %j',
    (heading) => {
      expect(answersIn(`Name\t${heading}\nShaft\t120`)).toEqual([{ name: 'Shaft', length: 120 }]);
    },
  );

  test('has numbers in the unit of their column, unless they name one', () => {
    const text = 'Part;Length (in);Diameter (cm)\nShaft;4 3/4;8\nDisc;20 mm;2 to 3';
    expect(answersIn(text)).toEqual([
      { name: 'Shaft', length: 120.65, diameter: 80 },
      { name: 'Disc', length: 20, diameter: [20, 30] },
    ]);
  });

  test('follows the units of the interview where nothing else is said', () => {
    expect(answersIn('Name;Length\nShaft;2', { ...MM, units: 'inch' })).toEqual([
      { name: 'Shaft', length: 50.8 },
    ]);
  });

  test('keeps an inch mark, takes "not sure" as an answer and an empty cell as none', () => {
    const text = 'Name\tDiameter\tLength\tTolerance\nShaft\t3-1/2"\tnot sure\t';
    expect(answersIn(text)).toEqual([{ name: 'Shaft', diameter: 88.9, length: 'unknown' }]);
  });

  test('has the size of a block in one column or in three', () => {
    expect(answersIn('Name;Size\nHinge;90 x 60 x 55')).toEqual([{ name: 'Hinge', size: [90, 60, 55] }]);
    const three = 'Name;Shape;Length;Width;Height (cm)\nHinge;block;90;60;5,5\nShaft;round;120;;';
    expect(answersIn(three)).toEqual([
      { name: 'Hinge', shape: 'block', size: [90, 60, 55] },
      { name: 'Shaft', shape: 'round', length: 120 },
    ]);
  });
});

describe('what is wrong in it', () => {
  test('is told by row and heading, and costs nothing else', () => {
    const text =
      'Name;Shape;Material;Mass (kg)\nHinge;block;brass;0,8\n\nValve;cube;brass;1\nCleat;block;alu;heavy';
    expect(places(text)).toEqual([
      [4, 'Shape'],
      [5, 'Material'],
      [5, 'Mass (kg)'],
    ]);
    expect(answersIn(text)).toEqual([
      { name: 'Hinge', shape: 'block', material: 'brass', mass: 0.8 },
      { name: 'Valve', material: 'brass', mass: 1 },
      { name: 'Cleat', shape: 'block' },
    ]);
  });

  test('says what can stand there instead', () => {
    const [problem] = read('Name;Shape\nHinge;cube').problems;
    expect(problem?.why).toBe('"cube" is none of them: block, round, or "not sure".');
  });

  test('a number with two readings is refused with both', () => {
    const [problem] = read('Name;Length\nShaft;1,500').problems;
    expect(problem?.why).toContain('1500');
    expect(problem?.why).toContain('1.5');
  });

  test('a heading that nobody knows names the nearest one', () => {
    const { problems, parts } = read('Name;Materail;Colour\nHinge;brass;red');
    expect(problems.map(({ row, heading, why }) => [row, heading, why])).toEqual([
      [
        1,
        'Materail',
        'No question about a part is called that (did you mean "Material"?): the column is left out.',
      ],
      [1, 'Colour', 'No question about a part is called that: the column is left out.'],
    ]);
    expect(parts).toHaveLength(1);
  });

  test('a unit that nobody knows leaves its column out', () => {
    expect(places('Name;Length (furlong)\nShaft;2')).toEqual([[1, 'Length (furlong)']]);
    expect(answersIn('Name;Length (furlong)\nShaft;2')).toEqual([{ name: 'Shaft' }]);
  });

  test('one of three numbers of a size leaves the size open', () => {
    const text = 'Name;Length;Width;Height\nHinge;90;wide;55';
    expect(places(text)).toEqual([[2, 'Width']]);
    expect(answersIn(text)).toEqual([{ name: 'Hinge' }]);
  });

  test.each([
    ['a doubled column', 'Name;Mass;Mass\nHinge;1;2', [[1, 'Mass']]],
    ['a width alone', 'Name;Width\nHinge;20', [[2, 'Width']]],
    ['a cell too many', 'Name;Mass\nHinge;1;2', [[2, null]]],
    ['a quotation mark that stays open', 'Name;Material\n"Hinge;brass', [[1, null]]],
  ])('%s is told', (_, text, expected) => {
    expect(places(text)).toEqual(expected);
    expect(read(text).parts).toHaveLength(1);
  });

  test.each(['', 'Hinge', 'nothing of this\nis a table', '90\t60\n55\t20'])(
    '%j is no table of parts',
    (text) => {
      expect(read(text)).toEqual({ known: false, parts: [], problems: [] });
    },
  );
});

test('any text at all is read without a fault', () => {
  const cell = fc.oneof(
    fc.constantFrom('Name', 'Size', 'Length (mm)', '"', '""', '90 x 60', '1,500', 'not sure', 'Width', ''),
    fc.string({ maxLength: 8 }),
  );
  const separator = fc.constantFrom('\t', ';', ',', '\n', '\r\n');
  const table = fc
    .array(fc.tuple(cell, separator), { maxLength: 30 })
    .map((pieces) => pieces.flat().join(''));
  fc.assert(
    fc.property(table, (text) => Array.isArray(read(text).parts)),
    { numRuns: 200 },
  );
});
