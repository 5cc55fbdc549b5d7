import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { blockReplies, SHOP_REPLIES } from '../session/talk.ts';
import { buildProgram, emptyFolder, run } from './interview-program.ts';

let program = '';
beforeAll(async () => {
  program = await buildProgram();
});

const ARGS = ['--plain', '--ask-all', '--session', 'mine.json'];
const WHOLE = [
  'mm',
  'none',
  ...blockReplies('Lock gate hinge'),
  'add',
  ...blockReplies('Valve body'),
  ...SHOP_REPLIES,
];

/** How many answers the program said that it took: it repeats each with its title. */
const taken = (stdout: string): number =>
  stdout
    .split('\n')
    .filter((line, index, lines) => / > /.test(lines[index - 1] ?? '') && /^[A-Z][^:]*: /.test(line)).length;

const answersIn = (file: string): number => {
  const { answers } = JSON.parse(readFileSync(file, 'utf8'));
  const parts: readonly object[] = answers.parts;
  return [answers.shop, ...parts].reduce((sum, each) => sum + Object.keys(each).length, 0);
};

describe.each([
  ['SIGINT', 130],
  ['SIGTERM', 143],
  ['SIGHUP', 129],
] as const)('%s', (signal, expected) => {
  test(`saves, says where and how to go on, and leaves with ${expected}`, async () => {
    const cwd = emptyFolder();
    const { code, stdout } = await run(program, {
      args: ARGS,
      cwd,
      lines: ['mm', 'none', 'Hinge', 'block'],
      kill: { signal, after: 'Size (mm) > ' },
    });
    expect(code).toBe(expected);
    expect(stdout.replace(/\s+/g, ' ')).toContain(
      '"fivesides --resume --session mine.json" goes on with them.',
    );
    expect(answersIn(join(cwd, 'mine.json'))).toBe(taken(stdout));
  });
});

/** Places in the output at which the program is killed, spread over the whole interview. */
const POINTS = [700, 1900, 3300, 5200, 7100, 9000, 12000, 15500];

describe('killed without a warning', () => {
  test.each(POINTS)(
    'after %i characters: every answer that it said it took is there with --resume',
    async (after) => {
      const cwd = emptyFolder();
      const first = await run(program, { args: ARGS, cwd, lines: WHOLE, kill: { signal: 'SIGKILL', after } });
      expect(first.signal).toBe('SIGKILL');
      const count = answersIn(join(cwd, 'mine.json'));
      expect(count).toBeGreaterThanOrEqual(taken(first.stdout));
      expect(taken(first.stdout)).toBeGreaterThan(0);
      const again = await run(program, { args: [...ARGS, '--resume'], cwd, lines: ['review'] });
      expect(again.stderr).toBe('');
      expect(answersIn(join(cwd, 'mine.json'))).toBe(count);
    },
  );
});
