import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse, parseDocument } from 'yaml';
import { MACHINE_KINDS, ROTARY_CLASSES } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { catalogCheck } from '../../src/commands/catalog.ts';
import { catalogNew } from '../../src/commands/catalog-new.ts';
import { describeProblem } from '../../src/documents/problem.ts';
import { DEMO_FOLDER, demoCatalog, demoFiles } from '../catalog-demo/demo.ts';
import { folderWith } from '../temporary-folder.ts';

type Options = NonNullable<Parameters<typeof catalogNew>[1]>;

async function made(what: string, options: Options = {}, cwd = '/') {
  const [results, remarks]: [string[], string[]] = [[], []];
  const lines = {
    result: (line: string) => results.push(line),
    remark: (line: string) => remarks.push(line),
  };
  const code = await catalogNew(what, options, lines, cwd);
  return { code, text: results.join('\n'), remarks };
}

const KINDS = [
  ...ROTARY_CLASSES.map((each) => ['rotary', 'rotaries', { class: each }] as const),
  ...MACHINE_KINDS.map((each) => ['machine', 'machines', { kind: each }] as const),
];

const CATALOG = demoCatalog();

/** Rows of the demo as they are written, each with the units of its file. */
const DEMO_ROWS = demoFiles()
  .filter((name) => !name.includes('answers'))
  .flatMap((name) => {
    const file = parse(readFileSync(join(DEMO_FOLDER, name), 'utf8'));
    return (['rotaries', 'machines'] as const).flatMap((list) =>
      (file[list] ?? []).map((row: Record<string, unknown>) => ({ list, row, units: file.units })),
    );
  });

const leaves = (
  value: unknown,
  path: readonly string[],
): readonly (readonly [readonly string[], unknown])[] =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.entries(value).flatMap(([key, each]) => leaves(each, [...path, key]))
    : [[path, value]];

describe.each(KINDS)('a template for a %s, of %s, %o', (what, list, options) => {
  test('as it is, it tells what has to be filled in', async () => {
    const { code, text } = await made(what, options);
    expect(code).toBe(0);
    const read = readCatalog([folderWith({ 'a.yaml': text })]);
    expect(read.ok ? [] : read.problems.map(({ found }) => found)).toEqual([
      `${list}[0].id is missing`,
      `${list}[0].name is missing`,
    ]);
  });

  test('with id and name it is a row of which all the rest is not known', async () => {
    const { text } = await made(what, options);
    const named = text.replace('- id:', '- id: wren').replace(/\n( +)name:\n/, '\n$1name: Wren\n');
    const read = readCatalog([folderWith({ 'a.yaml': named })]);
    expect(read.ok ? [] : read.problems.map(describeProblem)).toEqual([]);
  });

  test('filled in, it is the row, and has a key for everything that rows of the demo say', async () => {
    const [of] = Object.values(options);
    const rows = DEMO_ROWS.filter(({ list: its, row }) => its === list && (row.class ?? row.kind) === of);
    expect(rows.length).toBeGreaterThan(0);
    for (const { row, units } of rows) {
      const { text } = await made(what, { ...options, units });
      const document = parseDocument(text);
      // a feature that is left out is not offered, and the template leaves none out
      if ('features' in row) document.deleteIn([list, 0, 'features']);
      const missing = Object.keys(row).filter((key) => key !== 'features' && !document.hasIn([list, 0, key]));
      for (const [key, value] of Object.entries(row)) {
        const isMap = typeof document.getIn([list, 0, key]) === 'object' && !Array.isArray(value);
        for (const [path, each] of isMap ? leaves(value, []) : [[[], value] as const])
          document.setIn([list, 0, key, ...path], document.createNode(each));
      }
      // plainly none, and so no key of this class
      expect(missing.filter((each) => each !== 'collet' && each !== 'tilt')).toEqual([]);
      document.set('currency', 'EUR');
      if (list === 'machines') document.deleteIn([list, 0, 'rotaryIncluded']);
      const read = readCatalog([folderWith({ 'a.yaml': String(document) })]);
      if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
      const demo = CATALOG[list].find(({ id }) => id === row.id);
      const { from: _from, ...own } = read.value[list][0] ?? {};
      const { from: _there, ...theirs } = demo ?? {};
      expect({ ...own, rotaryIncluded: null }).toEqual({ ...theirs, rotaryIncluded: null });
    }
  });
});

test('every key says what it means, in which unit, and which checks need it', async () => {
  const { text } = await made('machine', { units: 'inch' });
  expect(text).toContain(`    # travel [X, Y, Z], in inches
    # open without it: `);
  expect(text).toContain('# only for kind mill, convertible, spindle horizontal\n');
  expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  const lines = text.split('\n');
  const silent = lines.filter(
    (line, at) => /^ {4}\s*\w+:/.test(line) && !lines[at - 1]?.trim().startsWith('#'),
  );
  expect(silent).toEqual([]);
});

test('without a class it has the keys of every one', async () => {
  const { text } = await made('rotary');
  expect(text).toContain('# required: what kind of rotary it is: collet-indexer');
  expect(text).toMatch(/only for class single-support, trunnion\n(?: +#.*\n)* +tilt: unknown/);
});

describe('a file', () => {
  test('is written, and replaced only if that is said', async () => {
    const folder = folderWith({});
    const first = await made('rotary', { class: 'trunnion', out: 'own/a.yaml' }, folder);
    expect([first.code, first.remarks]).toEqual([0, []]);
    expect(existsSync(join(folder, 'own', 'a.yaml'))).toBe(true);
    writeFileSync(join(folder, 'own', 'a.yaml'), 'mine');
    const again = await made('rotary', { out: 'own/a.yaml' }, folder);
    expect([again.code, again.remarks]).toEqual([
      2,
      [
        'fivesides: own/a.yaml is not written: it is there already: say --overwrite, or --out with another file.',
      ],
    ]);
    expect(readFileSync(join(folder, 'own', 'a.yaml'), 'utf8')).toBe('mine');
    expect((await made('rotary', { out: 'own/a.yaml', overwrite: true }, folder)).code).toBe(0);
  });

  test('that is not filled in is refused by catalog check, with what is missing', async () => {
    const folder = folderWith({});
    await made('rotary', { out: 'a.yaml' }, folder);
    const remarks: string[] = [];
    const lines = { result: () => {}, remark: (line: string) => remarks.push(line) };
    expect(await catalogCheck([folder], lines)).toBe(2);
    expect(remarks.map((line) => line.replace(/^.*a\.yaml:\d+:\d+: /, ''))).toEqual([
      'rotaries[0].id is missing, expected a text: the id of the row',
      'rotaries[0].name is missing, expected a text: the name of the row',
      'rotaries[0].class is missing, expected collet-indexer, single-axis, single-support or trunnion',
    ]);
  });
});

test.each([
  ['lathe', {}, 'there is no template for "lathe": expected rotary or machine'],
  ['rotary', { kind: 'mill' }, '--kind is not for a rotary: expected --class'],
  [
    'rotary',
    { class: 'trunion' },
    'there is no class "trunion": expected collet-indexer, single-axis, single-support, trunnion (did you mean trunnion?)',
  ],
])('%s %o is refused', async (what, options, words) => {
  expect(await made(what, options)).toEqual({ code: 2, text: '', remarks: [`fivesides: ${words}.`] });
});
