import { describe, expect, test } from 'vitest';
import { type Options, runProgram } from '../../src/commands/program.ts';

type Call = readonly [command: string, target: unknown, options: Options];

async function run(...argv: string[]) {
  const calls: Call[] = [];
  const printed: string[] = [];
  const complaints: string[] = [];
  const called = (command: string, code: number) => async (target: unknown, options: Options) => {
    calls.push([command, target, options]);
    return code;
  };
  const interviewed = called('interview', 4);
  const code = await runProgram(
    argv,
    {
      interview: (options) => interviewed(null, options),
      decide: called('decide', 3),
      catalogCheck: called('check', 0),
      catalogImport: called('import', 0),
      catalogNew: called('new', 0),
      catalogDiff: called('diff', 0),
      catalogToCsv: called('to-csv', 0),
      verify: (file) => called('verify', 1)(file, {}),
      explain: called('explain', 0),
      lesson: called('lesson', 0),
    },
    { version: '1.2.3', print: (text) => printed.push(text), complain: (line) => complaints.push(line) },
  );
  return { code, calls, printed: printed.join(''), complaints };
}

describe('what is asked for is run with its options, and gives its exit code', () => {
  test('no command: the interview', async () => {
    const { code, calls } = await run(
      '--plain',
      '--units',
      'inch',
      '--catalog',
      'a',
      '--catalog',
      'b',
      '--session',
      's',
    );
    expect(code).toBe(4);
    expect(calls).toEqual([
      ['interview', null, { plain: true, units: 'inch', catalog: ['a', 'b'], session: 's', input: true }],
    ]);
  });

  test('--no-input never asks', async () => {
    expect((await run('--no-input')).calls[0]?.[2].input).toBe(false);
  });

  test('explain, with a name of several words or without', async () => {
    const { code, calls } = await run('explain', 'reach', 'high', '--ascii');
    expect(code).toBe(0);
    expect(calls).toEqual([['explain', 'reach high', { ascii: true, input: true }]]);
    expect((await run('explain')).calls[0]?.[1]).toBe(undefined);
  });

  test('lesson, with its name or without', async () => {
    const { calls } = await run('lesson', 'reach', '--units', 'inch');
    expect(calls).toEqual([['lesson', 'reach', { units: 'inch', input: true }]]);
    expect((await run('lesson')).calls[0]?.[1]).toBe(undefined);
  });

  test('a table as a catalog, and a catalog as tables', async () => {
    const { calls } = await run(
      'catalog',
      'import',
      'list.xlsx',
      '--map',
      'm.yaml',
      '--out',
      'own',
      '--overwrite',
    );
    expect(calls).toEqual([
      ['import', 'list.xlsx', { map: 'm.yaml', out: 'own', overwrite: true, input: true }],
    ]);
    expect((await run('catalog', 'to-csv', 'a', 'b')).calls).toEqual([
      ['to-csv', ['a', 'b'], { input: true }],
    ]);
    expect((await run('catalog', 'import')).code).toBe(2);
  });

  test('decide', async () => {
    const { code, calls } = await run(
      'decide',
      'a.yaml',
      '--format',
      'json',
      '--all',
      '--out',
      'o',
      '--catalog',
      'c',
    );
    expect(code).toBe(3);
    expect(calls[0]?.slice(0, 2)).toEqual(['decide', 'a.yaml']);
    expect(calls[0]?.[2]).toMatchObject({ format: 'json', all: true, out: 'o', catalog: ['c'] });
  });

  test('a single hyphen is a file', async () => {
    expect((await run('decide', '-')).calls[0]?.[1]).toBe('-');
  });

  test('options before the command count for it too', async () => {
    expect((await run('--catalog', 'a', '--ascii', 'decide', 'x')).calls[0]?.[2]).toMatchObject({
      catalog: ['a'],
      ascii: true,
    });
  });

  test('verify takes one file', async () => {
    const { code, calls } = await run('verify', 'paper.md');
    expect([code, calls[0]?.slice(0, 2)]).toEqual([1, ['verify', 'paper.md']]);
    expect((await run('verify', 'one', 'two')).code).toBe(2);
  });

  test('catalog check takes several folders', async () => {
    expect((await run('catalog', 'check', 'a', 'b')).calls[0]?.slice(0, 2)).toEqual(['check', ['a', 'b']]);
  });

  test('a row to fill in, and what two catalogs differ in', async () => {
    const made = await run(
      'catalog',
      'new',
      'rotary',
      '--class',
      'trunnion',
      '--units',
      'inch',
      '--out',
      'a.yaml',
    );
    expect(made.calls).toEqual([
      ['new', 'rotary', { class: 'trunnion', units: 'inch', out: 'a.yaml', input: true }],
    ]);
    expect((await run('catalog', 'diff', 'a', 'b', '--format', 'json')).calls).toEqual([
      ['diff', ['a', 'b'], { format: 'json', input: true }],
    ]);
    expect((await run('catalog', 'diff', 'a')).code).toBe(2);
    expect((await run('catalog', 'new')).code).toBe(2);
  });

  test('version and help', async () => {
    expect(await run('--version')).toMatchObject({ code: 0, printed: '1.2.3\n', calls: [], complaints: [] });
    const help = await run('--help');
    expect(help).toMatchObject({ code: 0, calls: [], complaints: [] });
    expect(help.printed).toContain('Usage: fivesides');
    expect((await run('help', 'decide')).printed).toContain('Usage: fivesides decide');
  });
});

describe('what cannot be understood is said in one line, with 2', () => {
  test.each([
    [['decid', 'x'], 'fivesides: there is no command "decid" (did you mean decide?)'],
    [['frobnicate'], 'fivesides: there is no command "frobnicate"'],
    [['--bogus'], "fivesides: unknown option '--bogus'"],
    [['--plian'], "fivesides: unknown option '--plian' (Did you mean --plain?)"],
    [
      ['--units', 'cm'],
      "fivesides: option '--units <units>' argument 'cm' is invalid. Allowed choices are mm, inch.",
    ],
    [['--session'], "fivesides: option '--session <file>' argument missing"],
    [['decide'], "fivesides: missing required argument 'answers'"],
    [['decide', 'a', 'b'], "fivesides: too many arguments for 'decide'. Expected 1 argument but got 2."],
    [
      ['decide', 'a', '--format', 'xml'],
      "fivesides: option '--format <format>' argument 'xml' is invalid. Allowed choices are text, json, markdown.",
    ],
    [
      ['catalog'],
      'fivesides: say what to do with the catalog: fivesides catalog check DIR…, or catalog import FILE',
    ],
    [['catalog', 'chek', 'x'], 'fivesides: there is no command "chek" (did you mean check?)'],
    [['catalog', 'check'], "fivesides: missing required argument 'dirs'"],
    [['\u001b[2J'], 'fivesides: there is no command "\\u{1b}[2J"'],
  ])('%j', async (argv, line) => {
    expect(await run(...argv)).toEqual({ code: 2, calls: [], printed: '', complaints: [line] });
  });
});

test('a fault inside a command is not mistaken for a wrong command line', async () => {
  const failing = async (): Promise<number> => {
    throw new TypeError('broken');
  };
  const usage = { version: '1', print: () => {}, complain: () => {} };
  const commands = {
    interview: failing,
    decide: failing,
    catalogCheck: failing,
    catalogImport: failing,
    catalogNew: failing,
    catalogDiff: failing,
    catalogToCsv: failing,
    verify: failing,
    explain: failing,
    lesson: failing,
  };
  await expect(runProgram(['decide', 'x'], commands, usage)).rejects.toThrow('broken');
});
