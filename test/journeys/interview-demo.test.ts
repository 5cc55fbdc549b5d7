import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { blockReplies, SHOP_REPLIES } from '../session/talk.ts';
import { emptyFolder, REAL_PROGRAM, run } from './interview-program.ts';

const DEMO = ['--catalog', resolve('catalog-demo')];
const LONGEST = 480_000;

let program = '';
beforeAll(async () => {
  program = REAL_PROGRAM;
});

test(
  'a whole interview on the demo catalog recommends what its saved answers decide from a file',
  async () => {
    const cwd = emptyFolder();
    const lines = [
      ...[
        'mm',
        'none',
        ...blockReplies('Lock gate hinge'),
        'copy 1',
        'Wide hinge',
        'size',
        '120 x 60 x 55',
        '',
      ],
      ...[...SHOP_REPLIES, 'save mine.yaml', '', 'show money', 'export half-page half.txt', 'report.md'],
    ];
    const asked = await run(program, {
      args: ['--plain', '--ask-all', '--session', 's.json', ...DEMO],
      cwd,
      lines,
      longest: LONGEST,
    });
    expect(asked.stderr).toBe('');
    expect(asked.code).toBe(0);
    const [, recommended] =
      /(\w+ with \w+) \([^)]*\) is recommended/.exec(asked.stdout.replace(/\s+/g, ' ')) ?? [];
    expect(readFileSync(join(cwd, 'report.md'), 'utf8').replace(/\s+/g, ' ')).toContain(recommended);
    // a view by its name, and a paper by itself
    expect(asked.stdout).toContain('Paid before the first part:');
    expect(asked.stdout).toContain('The half page is in half.txt.');
    expect(readFileSync(join(cwd, 'half.txt'), 'utf8')).toContain('IN HALF A PAGE');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(asked.stdout).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2500-\u28ff]/);

    const args = ['decide', 'mine.yaml', ...DEMO];
    const decided = await run(program, { args, cwd, lines: null, longest: LONGEST });
    expect(decided.code).toBe(0);
    expect(decided.stdout.replace(/\s+/g, ' ')).toContain(`${recommended} (`);
  },
  2 * LONGEST,
);
