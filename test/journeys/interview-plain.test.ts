import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { blockReplies, SHOP_REPLIES } from '../session/talk.ts';
import { buildProgram, emptyFolder, run } from './interview-program.ts';

let program = '';
beforeAll(async () => {
  program = await buildProgram();
});

const PLAIN = ['--plain', '--ask-all', '--session', 'mine.json'];
const WHOLE = ['mm', 'none', ...blockReplies('Lock gate hinge'), ...SHOP_REPLIES];
const plain = (cwd: string, lines: readonly string[], ...more: readonly string[]) =>
  run(program, { args: [...PLAIN, ...more], cwd, lines });
const saved = (cwd: string) => JSON.parse(readFileSync(join(cwd, 'mine.json'), 'utf8'));

describe('requirement 23: line by line', () => {
  test('only adds lines: no escape sequence, nothing drawn, no line over 80 columns', async () => {
    const { stdout, code } = await plain(emptyFolder(), [
      ...WHOLE,
      'help',
      '?',
      'goto 5',
      'why',
      'back',
      'quit',
    ]);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(stdout).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2500-\u28ff]/);
    const tooLong = stdout.split('\n').filter((line) => line.length > 80 && !line.includes('mine.json'));
    expect(tooLong).toEqual([]);
    expect(code).toBe(4);
  });

  test('says after each answer how many arrangements are left, and what dropped the others', async () => {
    const lines = [
      'mm',
      'none',
      'Hinge',
      'block',
      '110 x 60 x 55',
      'brass',
      'goto size',
      '170 x 60 x 55',
      'goto size',
      '20 x 20 x 20',
    ];
    const { stdout } = await plain(emptyFolder(), lines);
    expect(stdout).toContain('9 of 12 arrangements left; swing dropped 3; ahead now: Rowan with Robin.');
    expect(stdout).toContain('Still 9 of 12 arrangements left.');
    expect(stdout).toContain('6 of 12 arrangements left; swing dropped 3; ahead now: Rowan with Heron.');
    expect(stdout).toContain('12 of 12 arrangements left, 6 more than before; ahead now: Rowan with Wren.');
  });

  test('says in one sentence what is accepted, and keeps what was answered', async () => {
    const cwd = emptyFolder();
    const { stdout } = await plain(cwd, ['mm', 'none', 'Hinge', 'cube', 'block', '90 x 60 x 55 furlongs']);
    expect(stdout).toContain('"cube" is none of them: type a number from 1 to 2');
    expect(stdout).toContain('"furlongs" is no unit of length');
    expect(Object.keys(saved(cwd).answers.parts[0])).toEqual(['name', 'shape']);
  });

  test('words of the commands can be names when they stand in quotation marks, or begin a name', async () => {
    const cwd = emptyFolder();
    await plain(cwd, ['mm', 'none', '"review"', 'goto name', 'Save tray']);
    expect(saved(cwd).answers.parts[0].name.value).toBe('Save tray');
  });

  test('control characters and escape sequences reach neither answers nor screen', async () => {
    const cwd = emptyFolder();
    const { stdout } = await plain(cwd, ['mm', 'none', 'Hin\u001b[31mge\u0007\u202e', '\u001b[Ablock']);
    expect(saved(cwd).answers.parts[0].name.value).toBe('Hinge\\u{202e}');
    expect(saved(cwd).answers.parts[0].shape.value).toBe('block');
    expect(stdout).not.toContain('\u001b');
  });
});

describe('the end of the lines', () => {
  test('saves, says that the interview is unfinished, where it is and how to go on: exit code 4', async () => {
    const cwd = emptyFolder();
    const { stdout, code } = await plain(cwd, ['mm', 'none', 'Hinge']);
    expect(code).toBe(4);
    expect(stdout).toContain('The interview is unfinished.');
    expect(stdout.replace(/\s+/g, ' ')).toContain(
      `Your answers are in ${join(cwd, 'mine.json')}; "fivesides --resume --session mine.json"`,
    );
  });

  test('without an answer leaves no file', async () => {
    const cwd = emptyFolder();
    const { stdout, code } = await plain(cwd, []);
    expect(code).toBe(4);
    expect(existsSync(join(cwd, 'mine.json'))).toBe(false);
    expect(stdout).toContain('nothing saved');
  });

  test('goes on with --resume at the first open question', async () => {
    const cwd = emptyFolder();
    await plain(cwd, WHOLE.slice(0, 10));
    const before = saved(cwd);
    const { stdout, code } = await plain(cwd, WHOLE.slice(10), '--resume');
    expect(stdout).toContain('Depth from the top (mm) > 30');
    expect(code).toBe(4);
    expect(saved(cwd).answers.parts[0]).toMatchObject(before.answers.parts[0]);
    expect(Object.keys(saved(cwd).answers.shop)).toContain('matters');
  });
});

describe('a saved interview', () => {
  test('is offered; new begins another one, and only its first answer replaces the file', async () => {
    const cwd = emptyFolder();
    await plain(cwd, ['mm', 'none', 'Hinge']);
    const before = readFileSync(join(cwd, 'mine.json'), 'utf8');
    const { stdout } = await plain(cwd, ['new']);
    expect(stdout.replace(/\s+/g, ' ')).toContain('There is a saved interview with 3 answers about Hinge.');
    expect(readFileSync(join(cwd, 'mine.json'), 'utf8')).toBe(before);
    await plain(cwd, ['new', 'inch']);
    expect(saved(cwd).answers).toEqual({ shop: { units: { from: 'typed', value: 'inch' } }, parts: [] });
  });

  test('is left alone when the offer is not answered', async () => {
    const cwd = emptyFolder();
    await plain(cwd, ['mm', 'none', 'Hinge']);
    const before = readFileSync(join(cwd, 'mine.json'), 'utf8');
    const { code } = await plain(cwd, ['mm']);
    expect(code).toBe(4);
    expect(readFileSync(join(cwd, 'mine.json'), 'utf8')).toBe(before);
  });

  test.each([
    ['{"format": "fivesides-session/9"}', 'its format is "fivesides-session/9"'],
    ['not json', 'it is no JSON'],
  ])('of a kind that is not known is refused by name and never overwritten: %s', async (text, why) => {
    const cwd = emptyFolder();
    writeFileSync(join(cwd, 'mine.json'), text);
    const { code, stdout, stderr } = await plain(cwd, ['mm']);
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain(why);
    expect(readFileSync(join(cwd, 'mine.json'), 'utf8')).toBe(text);
  });

  test('that is not there cannot be resumed: exit code 2', async () => {
    const { code, stderr } = await plain(emptyFolder(), ['mm'], '--resume');
    expect(code).toBe(2);
    expect(stderr).toMatch(/^fivesides: there is no saved interview in .*mine\.json/);
  });

  test('is kept under the state folder where no file is named', async () => {
    const cwd = emptyFolder();
    await run(program, {
      args: ['--plain'],
      cwd,
      lines: ['mm'],
      env: { XDG_STATE_HOME: join(cwd, 'state') },
    });
    expect(existsSync(join(cwd, 'state', 'fivesides', 'session.json'))).toBe(true);
  });

  test('that cannot be written is said each time and once more at the end, and the interview goes on', async () => {
    const cwd = emptyFolder();
    writeFileSync(join(cwd, 'block.json'), '');
    const blocked = await run(program, {
      args: ['--plain', '--session', 'block.json/x.json'],
      cwd,
      lines: ['mm', 'none'],
    });
    expect(blocked.stderr.match(/could not be saved/g)).toHaveLength(3);
    expect(blocked.stdout).toContain('What do you call this part?');
  });
});

describe('without a terminal', () => {
  test.each([
    ['piped input', [], ['mm'], {}],
    ['no input at all', [], null, {}],
    ['--no-input', ['--no-input', '--plain'], ['mm'], {}],
    ['a terminal that is not one', [], null, { TERM: 'dumb' }],
    ['a wish for simple screens alone', [], null, { ACCESSIBLE: '1' }],
  ])('%s: exit code 2 and one line that names decide and --plain', async (_, args, lines, env) => {
    const { code, stdout, stderr } = await run(program, { args, cwd: emptyFolder(), lines, env });
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain('decide');
    expect(stderr).toContain('--plain');
  });
});
