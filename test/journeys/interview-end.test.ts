import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { blockReplies, SHOP_REPLIES } from '../session/talk.ts';
import { buildProgram, emptyFolder, run } from './interview-program.ts';

let program = '';
beforeAll(async () => {
  program = await buildProgram();
});

const block = (size: string, must: string) => {
  const replies = [...blockReplies('Lock gate hinge')];
  replies[2] = size;
  replies[12] = must;
  return replies;
};
const whole = (size = '90 x 60 x 55', must = 'no') => [
  'mm',
  'none',
  ...block(size, must),
  ...SHOP_REPLIES,
  '',
];
const plain = (cwd: string, lines: readonly string[]) =>
  run(program, { args: ['--plain', '--ask-all', '--session', 'mine.json'], cwd, lines });

describe('the end of the interview', () => {
  test.each([
    ['recommended', 0, '90 x 60 x 55', 'no'],
    ['none', 3, '900 x 600 x 550', 'no'],
    ['open', 4, '90 x 60 x 55', 'yes'],
  ])(
    'prints the result and leaves with the code of its outcome: %s, %i',
    async (outcome, expected, size, must) => {
      const cwd = emptyFolder();
      const { stdout, stderr, code } = await plain(cwd, [...whole(size, must), 'no']);
      expect(stderr).toBe('');
      expect(stdout).toContain(`The outcome: ${outcome}`);
      expect(stdout).not.toContain('unfinished');
      expect(code).toBe(expected);
      expect(existsSync(join(cwd, 'fivesides-report.md'))).toBe(false);
    },
  );

  test('writes the report where it is told to, and says so', async () => {
    const cwd = emptyFolder();
    const { stdout, code } = await plain(cwd, [...whole(), 'for the bank.md']);
    expect(code).toBe(0);
    expect(stdout).toContain('The report is in for the bank.md.');
    expect(readFileSync(join(cwd, 'for the bank.md'), 'utf8')).toBe(
      '# Decision\n\nThe outcome: recommended\n',
    );
  });

  test('writes over no file unasked', async () => {
    const cwd = emptyFolder();
    const file = join(cwd, 'fivesides-report.md');
    writeFileSync(file, 'mine');
    const kept = await plain(cwd, [...whole(), '', 'no', 'other.md']);
    expect(kept.code).toBe(0);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect(existsSync(join(cwd, 'other.md'))).toBe(true);
    const replaced = await plain(cwd, ['resume', '', '', 'yes']);
    expect(replaced.code).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('# Decision');
  });

  test('says why a file cannot be written, and asks for another name', async () => {
    const cwd = emptyFolder();
    const { stdout, code } = await plain(cwd, [...whole(), 'no/where.md', 'here.md']);
    expect(stdout.replace(/\s+/g, ' ')).toContain('Not written to no/where.md: there is no such folder.');
    expect(existsSync(join(cwd, 'here.md'))).toBe(true);
    expect(code).toBe(0);
  });

  test('an answer can still be changed after the result', async () => {
    const { stdout, code } = await plain(emptyFolder(), [
      ...whole(),
      'back',
      '5',
      '900 x 600 x 550',
      '',
      'no',
    ]);
    expect(stdout).toContain('The outcome: recommended');
    expect(stdout).toContain('The outcome: none');
    expect(code).toBe(3);
  });

  test('end of input at the result counts as finished', async () => {
    const { stdout, code } = await plain(emptyFolder(), whole());
    expect(code).toBe(0);
    expect(stdout).not.toContain('unfinished');
  });
});
