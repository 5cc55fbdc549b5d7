import { mkdirSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { type LessonOptions, lessonCommand } from '../../src/commands/lesson.ts';
import { printable } from '../../src/documents/printable.ts';
import { LESSONS_FOLDER } from '../teaching/lessons/lesson-fixture.ts';

const fresh = (): string => mkdtempSync(join(tmpdir(), 'fivesides-lesson-'));

async function run(
  name: string | undefined,
  lines: readonly string[],
  state = fresh(),
  options: LessonOptions = {},
) {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const stdin = Readable.from(lines.map((line) => `${line}\n`)) as Readable & { isTTY?: boolean };
  const code = await lessonCommand(name, options, { stdin, stdout, stderr, env: { XDG_STATE_HOME: state } });
  const text = (stream: PassThrough): string => String(stream.read() ?? '');
  return { code, said: text(stdout), complained: text(stderr), state };
}

test('without a name all are listed', async () => {
  const { code, said } = await run(undefined, []);
  expect(code).toBe(0);
  expect(said).toContain('part-size             From the size of a part to the envelope');
});

test('a lesson runs to its end', async () => {
  const { code, said } = await run('part-size', [
    '100',
    '',
    '190',
    '',
    'holds',
    '',
    'holds',
    '',
    '10.2 kg',
    '',
  ]);
  expect(code).toBe(0);
  expect(said).toContain('The lesson is at its end: 50 of 50 points.');
});

test('wrong, empty and mixed units are handled', async () => {
  const { said } = await run('part-size', ['', '80', '12 kg', '10 cm']);
  expect(said).toContain('Nothing is predicted yet');
  expect(said).toContain('That is: length of the part as it stands.');
  expect(said).toContain('Right: 7 points.');
});

test('points survive an interruption', async () => {
  const first = await run('part-size', ['hint', '100', '']);
  const kept: unknown = JSON.parse(readFileSync(join(first.state, 'fivesides', 'lessons.json'), 'utf8'));
  expect(kept).toMatchObject({ runs: { 'part-size': { index: 1, scores: [7] } } });
  const again = await run('part-size', ['quit'], first.state);
  expect(again.said).toContain('You go on at step 2, with 7 of 10 points.');
});

const runsIn = (state: string): string => join(state, 'fivesides', 'lessons.json');

test('two lessons at the same time: each keeps where one is', async () => {
  const { state } = await run('part-size', ['hint']);
  await Promise.all([run('reach', ['hint'], state), run('part-size', ['100', ''], state)]);
  const kept: unknown = JSON.parse(readFileSync(runsIn(state), 'utf8'));
  expect(kept).toMatchObject({ runs: { reach: { hints: 1 }, 'part-size': { index: 1 } } });
});

test('what is kept there by somebody else is left as it is, and that is told once', async () => {
  const state = fresh();
  mkdirSync(join(state, 'fivesides'));
  writeFileSync(runsIn(state), '{"mine": true}');
  const { code, said, complained } = await run('part-size', ['hint', '100', ''], state);
  expect(code).toBe(0);
  expect(said).toContain('Right: 7 points.');
  expect(complained.match(/cannot be kept/g)).toHaveLength(1);
  expect(readFileSync(runsIn(state), 'utf8')).toBe('{"mine": true}');
});

test('where nothing can be kept, that is told, and the lesson goes on', async () => {
  const state = join(fresh(), 'file');
  writeFileSync(state, '');
  const { said, complained } = await run('part-size', ['100', ''], state);
  expect(said).toContain('Right');
  expect(complained).toMatch(/^fivesides: Where you are in lessons could not be kept in .*lessons\.json: /);
});

test('who has come to its end begins anew', async () => {
  const all = ['100', '', '190', '', 'holds', '', 'holds', '', '10.2', ''];
  const { state } = await run('part-size', all);
  expect((await run('part-size', ['quit'], state)).said).toContain('STEP 1 OF 5');
});

test('a word can be asked about', async () => {
  expect((await run('part-size', ['explain term/swing'])).said).toContain('a word of the glossary');
});

test('in inches and plain characters', async () => {
  const { said } = await run('part-size', ['3.937'], fresh(), { units: 'inch', ascii: true });
  expect(said).toContain('80 mm (3.15 in)');
  expect(said).toContain('Right: 10 points.');
});

test('a file of one’s own', async () => {
  expect((await run(join(LESSONS_FOLDER, 'reach.yaml'), ['quit'])).said).toContain('REACH IN EVERY TILT');
});

test('a name that is none', async () => {
  const { code, complained } = await run('part-sise', []);
  expect(code).toBe(2);
  expect(complained).toContain('did you mean part-size?');
});

test('a file that is none', async () => {
  const { code, complained } = await run('./nowhere.yaml', []);
  expect(code).toBe(2);
  expect(complained).toContain('there is no such file');
});

test('points are kept for each learner, and written as a table', async () => {
  const state = fresh();
  await run('part-size', ['100'], state, { learner: 'Bench 4' });
  await run('part-size', ['hint', '100'], state);
  const file = join(state, 'scores.csv');
  const { code, complained } = await run(undefined, [], state, { scores: file });
  expect(code).toBe(0);
  expect(complained).toContain('2 steps written to');
  const today = /,\d{4}-\d\d-\d\d,/;
  const rows = readFileSync(file, 'utf8').split('\r\n');
  expect(rows.map((row) => row.replace(today, ',DAY,'))).toEqual([
    'learner,lesson,seed,date,step,answer,hints,wrong,points,of',
    ',part-size,,DAY,1,100,1,0,7,10',
    'Bench 4,part-size,,DAY,1,100,0,0,10,10',
    '',
  ]);
});

test('a table of scores replaces nothing unless it is said, and never the runs themselves', async () => {
  const state = fresh();
  await run('part-size', ['100'], state);
  const runs = join(state, 'fivesides', 'lessons.json');
  const kept = readFileSync(runs, 'utf8');
  const refused = await run(undefined, [], state, { scores: runs, overwrite: true });
  expect([refused.code, readFileSync(runs, 'utf8')]).toEqual([2, kept]);
  expect(refused.complained).toContain('it is read here itself');
  const file = join(state, 'scores.csv');
  await run(undefined, [], state, { scores: file });
  expect((await run(undefined, [], state, { scores: file })).complained).toContain('it is there already');
  expect((await run(undefined, [], state, { scores: file, overwrite: true })).code).toBe(0);
  symlinkSync(runs, join(state, 'link.csv'));
  const linked = await run(undefined, [], state, { scores: join(state, 'link.csv'), overwrite: true });
  expect(linked.complained).toContain('a link is there');
  expect((await run(undefined, [], state, { scores: state, overwrite: true })).complained).toContain(
    'that is a folder',
  );
});

test.each(['', '  ', 'a\tb', 'a\u001b[2J'])('a learner without a name is told: %j', async (learner) => {
  const { code, complained } = await run('part-size', [], fresh(), { learner });
  expect(code).toBe(2);
  expect(complained).toContain('no name for a learner');
  expect(complained.trimEnd()).toBe(printable(complained.trimEnd()));
});

test('an exercise is drawn, gone through and kept, and the same again', async () => {
  const options = { practice: 'collet', seed: '17', level: '2' };
  const first = await run(undefined, ['hint', 'reveal', ''], fresh(), options);
  expect(first.code).toBe(0);
  expect(first.said).toContain('fivesides lesson --practice collet --seed 17 --level 2');
  expect(first.said).toContain('STEP 1 OF');
  const kept: unknown = JSON.parse(readFileSync(join(first.state, 'fivesides', 'lessons.json'), 'utf8'));
  expect(kept).toMatchObject({ runs: { 'practice collet 17 level 2': { index: 1 } } });
  expect((await run(undefined, ['hint', 'reveal', ''], fresh(), options)).said).toBe(first.said);
});

test('without a seed any is taken, and told', async () => {
  const { said } = await run(undefined, ['quit'], fresh(), { practice: 'collet' });
  expect(said).toMatch(/--practice collet --seed \d+ --level 1/);
});

test.each([
  [undefined, { practice: 'colet' }, 'did you mean collet?'],
  [undefined, { practice: 'collet', seed: '-1' }, '--seed takes a whole number'],
  [undefined, { practice: 'collet', seed: '1e3' }, '--seed takes a whole number'],
  [undefined, { practice: 'collet', level: '4' }, 'is no level: 1, 2, 3'],
  ['reach', { practice: 'collet' }, 'leave out "reach"'],
  [undefined, { practice: 'collet', variants: '0' }, '--variants takes a whole number'],
  [undefined, { level: '3' }, '--practice'],
] as const)('an exercise that is none is told: %s %j', async (name, options, told) => {
  const { code, complained } = await run(name, [], fresh(), options);
  expect(code).toBe(2);
  expect(complained).toContain(told);
});

test('exercises for paper, each with its seed', async () => {
  const folder = fresh();
  const worksheet = join(folder, 'collet.md');
  const options = { practice: 'collet', seed: '5', variants: '2', worksheet };
  expect((await run(undefined, [], fresh(), options)).code).toBe(0);
  const [first, second] = [5, 6].map((seed) => readFileSync(join(folder, `collet-${seed}.md`), 'utf8'));
  expect(first).toContain('Exercise 5'.toLowerCase());
  expect(second).not.toBe(first);
});
