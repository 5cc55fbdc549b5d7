import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type DecideCommandOptions, type Deciding, decideCommand } from '../../src/commands/decide.ts';
import type { AnswersFile } from '../../src/questions/read-answers.ts';
import { jsonReport, markdownReport, textReport } from '../../src/report/index.ts';
import type { DecideOptions } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { fixtureDecision } from '../report/fixture.ts';

let folder = '';
const sockets: Server[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fivesides-decide-'));
});
afterEach(() => {
  for (const server of sockets.splice(0)) server.close();
  rmSync(folder, { recursive: true });
});

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly asked: DecideOptions | undefined;
}

/** Runs the command on a reader and an engine that are given, and keeps what it printed. */
async function run(
  decision: Decision,
  options: DecideCommandOptions = {},
  change: Partial<Deciding> = {},
  answers: Partial<AnswersFile['answers']> = {},
): Promise<Ran> {
  let out = '';
  let err = '';
  let asked: DecideOptions | undefined;
  const read: AnswersFile = {
    answers: { ...decision.inputs.answers, ...answers },
    shownIn: 'mm',
    text: '',
    file: 'shop.yaml',
  };
  const code = await decideCommand(
    'shop.yaml',
    options,
    {
      result: (text) => {
        out += text;
      },
      remark: (line) => {
        err += `${line}\n`;
      },
      columns: 100,
    },
    {
      readAnswers: () => ({ ok: true, value: read }),
      readCatalog: () => ({ ok: true, value: decision.inputs.catalog }),
      decide: (_answers, _catalog, given) => {
        asked = given;
        return decision;
      },
      ...change,
    },
  );
  return { code, out, err, asked };
}

describe('The exit code of decide', () => {
  it.each([
    ['recommended', 0],
    ['none', 3],
    ['open', 4],
  ] as const)('for an outcome of %s is %i', async (outcome, code) => {
    expect((await run(fixtureDecision({ outcome }))).code).toBe(code);
  });

  it('is 2 for input that cannot be used, with one line per problem and no result', async () => {
    const bad = (file: string) => () => ({
      ok: false as const,
      problems: [
        { file, line: 3, column: 9, found: 'shape is "cube\u001b[2J"', expected: 'expected block or round' },
      ],
    });
    const ran = await run(fixtureDecision(), {}, { readAnswers: bad('a.yaml'), readCatalog: bad('b.yaml') });
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err.trimEnd().split('\n')).toEqual([
      'a.yaml:3:9: shape is "cube\\u{1b}[2J", expected block or round',
      'b.yaml:3:9: shape is "cube\\u{1b}[2J", expected block or round',
    ]);
  });
});

describe('Answers', () => {
  it('are read beside the catalog, so that what does not go with it is told with the rest', async () => {
    let beside: unknown;
    const readAnswers: Deciding['readAnswers'] = (_path, _text, catalog) => {
      beside = catalog;
      return { ok: false, problems: [] };
    };
    const decision = fixtureDecision();
    expect((await run(decision, {}, { readAnswers })).code).toBe(2);
    expect(beside).toBe(decision.inputs.catalog);
  });
});

describe('The formats of decide', () => {
  it('text goes to standard output alone', async () => {
    const decision = fixtureDecision();
    expect(await run(decision)).toMatchObject({
      out: textReport(decision, { width: 100, ascii: false }),
      err: '',
    });
  });

  it.each([
    ['json', jsonReport],
    ['markdown', markdownReport],
  ] as const)(
    '%s goes to standard output, the answer in a sentence to standard error',
    async (format, report) => {
      const decision = fixtureDecision({ outcome: 'open' });
      const ran = await run(decision, { format });
      expect(ran.out).toBe(report(decision));
      expect(ran.err.replace(/\s+/g, ' ')).toContain(
        'Most worth finding out is depth from the sides (Lock gate hinge): you can measure it or look it up.',
      );
    },
  );

  it('hands on what was asked for', async () => {
    expect((await run(fixtureDecision(), { all: true, units: 'inch' })).asked).toEqual({
      all: true,
      flips: [],
      ranges: true,
      shownIn: 'inch',
    });
    expect((await run(fixtureDecision())).asked).toEqual({
      all: false,
      flips: [],
      ranges: true,
      shownIn: 'mm',
    });
  });
});

describe('A file for the result', () => {
  it('is written whole, and standard output stays empty', async () => {
    const out = join(folder, 'report.md');
    const ran = await run(fixtureDecision(), { format: 'markdown', out });
    expect(ran).toMatchObject({ code: 0, out: '' });
    expect(readFileSync(out, 'utf8')).toBe(markdownReport(fixtureDecision(), 'report-figures'));
    expect(ran.err).toContain(`written to ${out}, its figures to report-figures beside it`);
  });

  it('a file is written as its name asks for, unless something else was asked for', async () => {
    const [named, asked] = [join(folder, 'decision.json'), join(folder, 'other.json')];
    await run(fixtureDecision(), { out: named });
    expect(readFileSync(named, 'utf8')).toBe(jsonReport(fixtureDecision()));
    await run(fixtureDecision(), { out: asked, format: 'text' });
    expect(readFileSync(asked, 'utf8')).not.toBe(jsonReport(fixtureDecision()));
  });

  it('that is there already is replaced', async () => {
    const out = join(folder, 'report.json');
    writeFileSync(out, 'old');
    await run(fixtureDecision(), { format: 'json', out });
    expect(readFileSync(out, 'utf8')).toBe(jsonReport(fixtureDecision()));
  });

  it.each([
    ['a folder', () => folder, 'that is a folder'],
    ['a link to a folder', () => linkTo(folder), 'a link is there, and is not written through'],
    ['a socket', socket, 'that is no ordinary file'],
    ['a file in a folder that is missing', () => join(folder, 'no', 'report.md'), 'there is no such folder'],
    [
      'a file below a file',
      () => join(writtenFile(), 'report.md'),
      'a file is where its folder would have to be',
    ],
  ])('that is %s is refused in a sentence', async (_what, make, why) => {
    const out = await make();
    const ran = await run(fixtureDecision(), { out });
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toBe(`fivesides: ${out} was not written: ${why}.\n`);
  });
});

function linkTo(target: string): string {
  const link = join(folder, 'link');
  rmSync(link, { force: true });
  symlinkSync(target, link);
  return link;
}

/** A socket: something at a path that is neither a file nor a folder. */
async function socket(): Promise<string> {
  const path = join(folder, 'socket');
  const server = createServer().listen(path);
  await once(server, 'listening');
  sockets.push(server);
  return path;
}

function writtenFile(): string {
  const file = join(folder, 'file');
  writeFileSync(file, '');
  return file;
}
