import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { readSessionFile } from '../../src/commands/session-file.ts';
import { buildProgram, run } from '../journeys/interview-program.ts';
import { folderWith } from '../temporary-folder.ts';
import { command, shell, talking } from './program.ts';

let program = '';
let folder = '';
beforeAll(async () => {
  program = await buildProgram();
});
beforeEach(() => {
  folder = folderWith({});
});

const ARGS = ['--plain', '--ask-all', '--session', 'kept.json'];
const LINES = ['mm', 'none', 'Hinge', 'block', '90 x 60 x 55', ...Array<string>(25).fill('not sure')];

/** What a session file holds, as one of what it held after each answer. */
const answersIn = (name: string): readonly string[] => {
  const found = readSessionFile(join(folder, name));
  if (found.found !== 'interview') throw new Error(`${name} is ${found.found}`);
  const { shop, parts } = found.saved.answers;
  return [...Object.keys(shop), ...parts.flatMap((part) => Object.keys(part))];
};
/** How many answers the program said that it took: it repeats each with its title. */
const taken = (stdout: string): number =>
  stdout
    .split('\n')
    .filter((line, at, lines) => / > /.test(lines[at - 1] ?? '') && /^[A-Z][^:]*: /.test(line)).length;

describe('SIGTERM while answers are saved', () => {
  test.each(Array.from({ length: 20 }, (_, at) => 400 + at * 450))(
    'after %i characters: the file is whole, and every answer that was told as taken is in it',
    async (after) => {
      const { code, stdout } = await run(program, {
        args: ARGS,
        cwd: folder,
        lines: LINES,
        kill: { signal: 'SIGTERM', after },
      });
      expect(code).toBe(143);
      expect(readdirSync(folder)).toEqual(existsSync(join(folder, 'kept.json')) ? ['kept.json'] : []);
      if (taken(stdout) > 0) expect(answersIn('kept.json').length).toBeGreaterThanOrEqual(taken(stdout));
    },
  );
});

test('two runs on one interview at the same time: the answers of both are there, and that is told', async () => {
  const runs = [1, 2].map(() => talking(program, ARGS, folder));
  await Promise.all(runs.map((each) => each.said('taken as millimeters')));
  // both have seen that there is no file
  for (const [at, each] of runs.entries()) each.answer(LINES.with(2, `Hinge ${at + 1}`).slice(0, 7 + at));
  const ended = await Promise.all(runs.map((each) => each.ended));
  const files = readdirSync(folder).sort();
  expect(files).toEqual(['kept-2.json', 'kept.json']);
  for (const { stdout } of ended) {
    const [, said = ''] = /answers are in\s+(\S+);/.exec(stdout) ?? [];
    expect(answersIn(said.split('/').at(-1) ?? '').length).toBeGreaterThanOrEqual(taken(stdout));
  }
  const names = files.map((name) => readFileSync(join(folder, name), 'utf8').match(/Hinge \d/)?.[0]);
  expect(names.sort()).toEqual(['Hinge 1', 'Hinge 2']);
  expect(ended.map(({ stderr }) => stderr).join('')).toContain('Another run has written to');
});

describe('where an interview cannot be kept', () => {
  const started = async (session: string) => {
    const args = ['--plain', '--ask-all', '--session', session];
    return run(program, { args, cwd: folder, lines: ['mm', 'none'] });
  };

  test('a folder that refuses everybody: each time it is told, and in the end that nothing is saved', async () => {
    const { stderr, stdout } = await started('/proc/kept.json');
    expect(stderr).toContain('The interview could not be saved to /proc/kept.json: ');
    expect(stdout.replace(/\s+/g, ' ')).toContain('Your answers are NOT saved');
  });

  test('a file where its folder would be', async () => {
    writeFileSync(join(folder, 'file'), 'mine');
    const { stderr } = await started('file/kept.json');
    expect(stderr).toContain('could not be saved');
    expect(readFileSync(join(folder, 'file'), 'utf8')).toBe('mine');
  });

  test.each([
    ['to a file', 'mine.txt'],
    ['to nothing', 'nothing.json'],
  ])('a link %s is refused at once: 2, and nothing is written where it leads', async (_, target) => {
    writeFileSync(join(folder, 'mine.txt'), 'mine');
    symlinkSync(join(folder, target), join(folder, 'kept.json'));
    const { code, stderr } = await started('kept.json');
    expect(code).toBe(2);
    expect(stderr).toContain('a link is there, and is not written through. It is left as it is;');
    expect(readdirSync(folder).sort()).toEqual(['kept.json', 'mine.txt']);
    expect(readFileSync(join(folder, 'mine.txt'), 'utf8')).toBe('mine');
  });

  test('what a damaged file says of itself steers no terminal', async () => {
    writeFileSync(join(folder, 'kept.json'), JSON.stringify({ format: '\u001b[2J\u202e', answers: {} }));
    const { code, stderr } = await started('kept.json');
    expect(code).toBe(2);
    expect(stderr).toContain('its format is "\\u{1b}[2J\\u{202e}"');
  });
});

describe('nobody reads on', () => {
  test.each([
    ['explain', '$fivesides explain'],
    ['lesson', 'yes reveal | $fivesides lesson part-size'],
    ['catalog check', '$fivesides catalog check own'],
    ['an interview', `yes | head -200 | $interview ${ARGS.join(' ')}`],
  ])('%s ends quietly', (_, line) => {
    mkdirSync(join(folder, 'own'));
    const rows = Array.from(
      { length: 300 },
      (_row, at) => `  - { id: r${at}, name: Wren ${at}, class: trunnion }\n`,
    );
    writeFileSync(
      join(folder, 'own', 'a.yaml'),
      `format: fivesides-catalog/1\nunits: mm\nrotaries:\n${rows.join('')}`,
    );
    const { stdout, stderr } = shell(`${line} | head -1`, folder, { interview: command(program) });
    expect(stderr.replace(/^yes: .*\n/m, '')).toBe('');
    expect(stdout.split('\n').length).toBeLessThanOrEqual(2);
  });

  test('a device that is always full is told, and no success', () => {
    const { status, stderr } = shell('$fivesides explain swing > /dev/full', folder);
    expect(status).toBe(2);
    expect(stderr).toContain('fivesides: what was to be printed is not all there: the disk is full.\n');
    expect(stderr).not.toContain('a fault of the program');
  });
});
